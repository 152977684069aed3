import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
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

test('between two that lie as near as numbers can room is made', () => {
  const past = (near: number, far: number) =>
    movedPast(
      stateOf({ own: piece(0), near: piece(near), zfar: piece(far) }),
      { work: 'own', stage: 'cut' },
      1,
    );
  const step = Number.EPSILON;
  expect(past(1, 2)).toMatchObject({ to: { stage: 'cut', rank: 1.5 }, past: { work: 'near' } });
  // Halfway is the nearer of them, or the farther one.
  const room = (near: number, far: number) => [
    [0, 1],
    [near, 2],
    [far, 3],
  ];
  const to = { stage: 'cut', rank: 2.5 };
  for (const near of [1, 1 + step]) {
    const far = near + step;
    expect(past(near, far)).toMatchObject({ to, room: room(near, far), past: { work: 'near' } });
  }
});

describe('works of one rank, as two tabs add them,', () => {
  const names = (state: State) => groups(state).map(([name]) => String(name).split(' ')[0]);
  const past = (state: State, work: string, by: -1 | 1) => {
    const { past, ...moving } = movedPast(state, { work, stage: 'cut' }, by) ?? {};
    expect(past).toBeDefined();
    const { state: after } = act(state, { do: 'move', ...moving, now: 1 } as Action);
    return [past?.work, names(after)];
  };

  test('are passed together: there is no place between them', () => {
    const state = stateOf({ a: piece(1), b: piece(2), c: piece(2), d: piece(3), e: piece(4) });
    expect(past(state, 'd', -1)).toEqual(['b', ['a', 'd', 'b', 'c', 'e']]);
    expect(past(state, 'a', 1)).toEqual(['c', ['b', 'c', 'a', 'd', 'e']]);
    expect(past(state, 'c', -1)).toEqual(['b', ['a', 'c', 'b', 'd', 'e']]);
    const alike = stateOf({ a: piece(1), b: piece(1), c: piece(1), d: piece(1) });
    expect(past(alike, 'd', -1)).toEqual(['a', ['d', 'a', 'b', 'c']]);
    expect(past(alike, 'a', 1)).toEqual(['d', ['b', 'c', 'd', 'a']]);
  });

  test('are passed up to the last step of them, though one side is apart among the others', () => {
    const sides = ['left', 'middle', 'right'];
    const movedSides = { middle: { cut: { stage: 'cut', rank: 2 } } };
    const state = stateOf({ a: piece(1), strips: strip(2, { sides, movedSides }) });
    expect(groups(state).slice(1, 3)).toEqual([
      ['strips cut', 'left+right', 2, 4],
      ['strips cut middle', 'middle', 3, 3],
    ]);
    const moving = movedPast(state, { work: 'a', stage: 'cut' }, 1);
    expect(moving?.past.side).toBeUndefined();
    expect(past(state, 'a', 1)).toEqual(['strips', ['strips', 'strips', 'a', 'strips']]);
  });

  test('are not passed together where one of them is of the same side', () => {
    const movedSides = { left: { edge: { stage: 'cut', rank: 5 } } };
    const strips = strip(2, { ...SIDES, movedSides });
    const a = piece(1, { moved: { cut: { stage: 'cut', rank: 5 } } });
    const state = stateOf({ a, strips, b: piece(9) });
    expect(names(state)).toEqual(['strips', 'a', 'strips', 'b', 'strips']);
    expect(movedPast(state, { work: 'strips', stage: 'cut' }, 1)).toBeUndefined();
    // The right one has nothing there.
    const right = movedPast(state, { work: 'strips', stage: 'cut', side: 'right' }, 1);
    expect(right).toMatchObject({ past: { work: 'strips', side: 'left' }, to: { rank: 7 } });
  });
});
