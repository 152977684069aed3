import { describe, expect, test } from 'vitest';
import { movedPast, movedWith, stepGroups } from '../../src/garment/actions/move.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const SIDES = { sides: ['left', 'right'] };
const piece = (rank: number, more: object = {}) => ({
  ...{ name: 'Piece', calculation: 'toy-piece', rank },
  fields: { length: typed('60'), width: typed('40'), bottom: typed('2') },
  ...more,
});
const strip = (rank: number, more: object = {}) => ({
  ...{ name: 'Strip', calculation: 'toy-strip', rank },
  fields: {
    length: typed('6'),
    pitch: typed('2'),
    end: typed('1'),
    fit: typed('keep'),
    rows: typed('one'),
  },
  ...more,
});
const stateOf = (works: object) => begin(garmentOf({ works } as never), KNOWN);
const groups = (state: State, alone?: Parameters<typeof stepGroups>[1]) =>
  stepGroups(state.answer, alone).map(({ work, stage, side, sides, from, till }) => [
    ...[[work, stage, side].filter(Boolean).join(' '), [...sides].join('+'), from, till],
  ]);

describe('steps that are moved together', () => {
  const two = stateOf({ body: piece(1), strips: strip(2, SIDES) });

  test('are those of a stage of a work, of all its sides', () => {
    expect(groups(two)).toEqual([
      ['body cut', '', 0, 1],
      ['strips cut', 'left+right', 2, 3],
      ['strips edge', 'left+right', 4, 5],
    ]);
  });

  test('but for a side that is asked for by itself, at the one stage it is asked of', () => {
    const alone = { work: 'strips', stage: 'cut', side: 'right' } as const;
    expect(groups(two, alone)).toEqual([
      ['body cut', '', 0, 1],
      ['strips cut', 'left', 2, 2],
      ['strips cut right', 'right', 3, 3],
      ['strips edge', 'left+right', 4, 5],
    ]);
    expect(groups(two, { ...alone, work: 'body' })).toEqual(groups(two));
  });

  test('a side that was moved by itself is apart, also where it stands with the others again', () => {
    const movedSides = { right: { cut: { stage: 'cut', rank: 2 } } };
    const apart = stateOf({ body: piece(1), strips: strip(2, { ...SIDES, movedSides }) });
    expect(groups(apart).map(([name]) => name)).toEqual([
      ...['body cut', 'strips cut', 'strips cut right', 'strips edge'],
    ]);
    const [step] = apart.answer.steps.filter(({ home }) => home.startsWith('strips|right'));
    expect(step && movedWith(apart.answer, step)).toEqual({
      work: 'strips',
      stage: 'cut',
      side: 'right',
    });
  });

  test('what a side that was moved takes along with it is apart from the others, too', () => {
    // The right one is cut late: what comes after it comes later still.
    const movedSides = { right: { cut: { stage: 'edge', rank: 9 } } };
    const late = stateOf({ strips: strip(2, { ...SIDES, movedSides }) });
    expect(groups(late)).toEqual([
      ['strips cut', 'left', 0, 0],
      ['strips edge', 'left', 1, 1],
      ['strips cut right', 'right', 2, 2],
      ['strips edge right', 'right', 3, 3],
    ]);
    const edge = late.answer.steps[3];
    expect(edge && movedWith(late.answer, edge)).toMatchObject({ stage: 'edge', side: 'right' });
  });
});

test('steps of two sides don’t pass what follows on one of them', () => {
  const movedSides = { left: { edge: { stage: 'cut', rank: 5 } } };
  const state = stateOf({ strips: strip(2, { ...SIDES, movedSides }), other: piece(9) });
  expect(groups(state).map(([name]) => name)).toEqual([
    ...['strips cut', 'strips edge left', 'other cut', 'strips edge'],
  ]);
  expect(movedPast(state, { work: 'strips', stage: 'cut' }, 1)).toBeUndefined();
  expect(movedPast(state, { work: 'strips', stage: 'edge', side: 'left' }, 1)).toMatchObject({
    ...{ to: { stage: 'cut', rank: 10 }, past: { work: 'other' } },
  });
});

test('between two that lie as near as numbers can there is no place, nor between two of one rank', () => {
  const past = (near: number, far: number) =>
    movedPast(
      stateOf({ own: piece(0), near: piece(near), zfar: piece(far) }),
      { work: 'own', stage: 'cut' },
      1,
    );
  const step = Number.EPSILON;
  expect(past(1, 2)).toMatchObject({ to: { stage: 'cut', rank: 1.5 }, past: { work: 'near' } });
  expect(past(1, 1)).toBeUndefined();
  // Halfway is the nearer of them, or the farther one.
  expect(past(1, 1 + step)).toBeUndefined();
  expect(past(1 + step, 1 + 2 * step)).toBeUndefined();
});
