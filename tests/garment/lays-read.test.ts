import { expect, test } from 'vitest';
import { layIn, MOST_FLAWS, MOST_LAID } from '../../src/garment/record/cloth-lay.ts';
import { isPieceSaid, pieceIn } from '../../src/garment/record/piece-said.ts';
import { LONGEST } from '../../src/lengths/length.ts';

const CM = 80_000;
const FLAW = { along: 40 * CM, across: 30 * CM, long: CM, wide: CM };
const LAID = { id: 'w1|front', turn: 180, x: 20 * CM, y: -3 * CM };
const FORM = { kind: 'four', long: 60 * CM, top: 30 * CM, bottom: 34 * CM, slant: 'both' };
const SIDES = {
  kind: 'points',
  points: [
    [0, 0],
    [CM, 0],
    [CM, CM],
  ],
};
const SIZE = {
  ...{ count: 2, along: 62 * CM, across: 36 * CM, fold: false, mirrored: true },
  ...{ oneWay: true, tilt: 2, pair: true, match: [10 * CM, 0] },
  outline: { form: FORM, adds: [CM, CM, 0, CM] },
};
const OF = {
  ...{ width: 140 * CM, folded: false, nap: true, gap: 0, repeat: 8 * CM, repeatAcross: 6 * CM },
  flaws: [FLAW],
  pieces: { front: SIZE },
};
const SAID = {
  ...{ nap: true, gap: 1, repeatAcross: 6 * CM, flaws: [FLAW], held: [LAID], pieces: {} },
  found: { length: 90 * CM, laid: [LAID], of: OF },
};

const many = <One>(count: number, one: One) => Array.from({ length: count }, () => one);

/** What is said of a cloth with something else at one place, or nothing. */
function withAt(it: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  const inside = it as Record<string, unknown>;
  const put = withAt(inside[key], rest, value);
  return Array.isArray(it)
    ? it.map((one, i) => (String(i) === key ? put : one))
    : { ...inside, [key]: put };
}

const readOf = (said: unknown) => layIn({ lays: { cloth: said } }, 'cloth') as object;

test('all that can be said of laying a cloth is read as it was written', () => {
  expect(readOf(SAID)).toEqual(SAID);
  expect(layIn({ lays: { cloth: SAID } }, 'lining')).toEqual({});
  expect(layIn({ lays: { cloth: SAID } }, 'toString')).toEqual({});
  expect(layIn({}, 'cloth')).toEqual({});
  for (const none of [null, [], 7, 'x']) expect(readOf(none)).toEqual({});
});

const LENGTH = [
  [1, LONGEST],
  [0, -1, LONGEST + 1, 1.5, '8', null],
] as const;
const PLACE = [
  [0, LONGEST],
  [-1, LONGEST + 1, 0.5, '0', undefined],
] as const;
const YES_OR_NO = [
  [true, false],
  [undefined, 1, 'no'],
] as const;
const MAYBE = [
  [undefined, true],
  [false, 1],
] as const;
const FAR = [
  [2 * LONGEST, -2 * LONGEST],
  [2 * LONGEST + 1, -2 * LONGEST - 1, '0', undefined],
] as const;
const PLACES = [
  [[], many(MOST_LAID, LAID)],
  [{}, 'x', many(MOST_LAID + 1, LAID), [LAID, 7], [null]],
] as const;
const FLAWS = [
  [[], many(MOST_FLAWS, FLAW)],
  [{}, many(MOST_FLAWS + 1, FLAW), [FLAW, 7]],
] as const;
const PIECE = 'found.of.pieces.front';

test.each([
  ['nap', [true], [false, 1]],
  ['gap', ...LENGTH],
  ['repeatAcross', ...LENGTH],
  ['flaws', ...FLAWS],
  ['flaws.0.long', ...LENGTH],
  ['flaws.0.wide', ...LENGTH],
  ['flaws.0.along', ...PLACE],
  ['flaws.0.across', ...PLACE],
  ['pieces', [{ front: 7 }], [[], 7, null]],
  ['held', ...PLACES],
  ['held.0.id', [''], [7, undefined]],
  ['held.0.turn', [0, 359], [-1, 360, 0.5, undefined]],
  ['held.0.x', ...FAR],
  ['held.0.y', ...FAR],
  ['found', [], [null, [], 7]],
  ['found.length', ...LENGTH],
  ['found.laid', ...PLACES],
  ['found.of', [], [null, [], 7, undefined]],
  ['found.of.width', ...LENGTH],
  ['found.of.gap', ...PLACE],
  ['found.of.folded', ...YES_OR_NO],
  ['found.of.nap', ...YES_OR_NO],
  ['found.of.repeat', ...LENGTH],
  ['found.of.repeatAcross', ...LENGTH],
  ['found.of.flaws', ...FLAWS],
  ['found.of.pieces', [{}], [[], undefined, { front: null }, { front: SIZE, back: 7 }]],
  [`${PIECE}.count`, [1, MOST_LAID], [0, MOST_LAID + 1, undefined]],
  [`${PIECE}.along`, ...LENGTH],
  [`${PIECE}.across`, ...LENGTH],
  [`${PIECE}.fold`, ...YES_OR_NO],
  [`${PIECE}.oneWay`, ...MAYBE],
  [`${PIECE}.pair`, ...MAYBE],
  [`${PIECE}.mirrored`, ...MAYBE],
  [`${PIECE}.tilt`, [undefined, 1, 5], [0, 6, 1.5]],
  [`${PIECE}.match`, [undefined, [0, -CM]], [[0], [0, 0, 0], ['0', 0], {}]],
  [`${PIECE}.outline`, [undefined], [null, 7, {}]],
  [`${PIECE}.outline.form`, [SIDES], [null, { ...FORM, slant: 'left' }]],
  [`${PIECE}.outline.adds`, [undefined, [], [0, LONGEST]], [7, 'edges', [-1, 0], [0, '1']]],
])('%s: what can be, and what is found or said again', (place, good, bad) => {
  const [part = '', ...inside] = place.split('.');
  const at = (value: unknown) => withAt(SAID, [part, ...inside], value);
  for (const value of good) expect(readOf(at(value)), JSON.stringify(value)).toEqual(at(value));
  const { [part as keyof typeof SAID]: _, ...rest } = SAID;
  for (const value of bad) expect(readOf(at(value)), JSON.stringify(value)).toEqual(rest);
});

test.each([
  ['long', ...PLACE],
  ['top', ...PLACE],
  ['bottom', ...PLACE],
  ['slant', ['both', 'right'], ['left', undefined]],
  ['kind', [], ['round', undefined]],
  ['bows', [undefined, many(4, -LONGEST)], [many(5, 0), [LONGEST + 1], {}]],
])('the %s of an outline of four sides', (key, good, bad) => {
  const said = (value: unknown) => ({ outline: { form: { ...FORM, [key]: value } } });
  for (const value of good) expect(pieceIn(said(value)), `${value}`).toEqual(said(value));
  for (const value of bad) {
    expect(pieceIn(said(value)), `${value}`).toEqual({});
    expect(isPieceSaid(said(value)), `${value}`).toBe(false);
  }
});

test.each([
  ['points', [[[0, 0]], many(200, [0, 0])], [[], many(201, [0, 0]), {}, [[0, 0], [0]], 7]],
  ['bows', [undefined, [], many(3, 0)], [many(4, 0), ['0'], 7]],
  ['kind', [], ['round', undefined]],
])('the %s of an outline by its corners', (key, good, bad) => {
  const said = (value: unknown) => ({ outline: { form: { ...SIDES, [key]: value } } });
  for (const value of good) expect(pieceIn(said(value)), `${value}`).toEqual(said(value));
  for (const value of bad) expect(pieceIn(said(value)), `${value}`).toEqual({});
});

test('what is cut outside of an outline: what the edges take, or so much all round', () => {
  const said = (adds: unknown) => ({ outline: { form: FORM, adds } });
  for (const adds of [undefined, 'edges', 1, 4_000_000]) {
    expect(pieceIn(said(adds))).toEqual(said(adds));
    expect(isPieceSaid(said(adds))).toBe(true);
  }
  for (const adds of [0, 4_000_001, 1.5, 'none', null]) expect(pieceIn(said(adds))).toEqual({});
});

test('what is no part of what is said of a piece is never kept as one', () => {
  expect(isPieceSaid({ oneWay: true, tilt: undefined })).toBe(true);
  expect(isPieceSaid({ oneWay: true, toString: 1 })).toBe(false);
  expect(isPieceSaid({ oneWay: true, colour: 'red' })).toBe(false);
  for (const none of [undefined, null, [], 7]) expect(pieceIn(none)).toEqual({});
});
