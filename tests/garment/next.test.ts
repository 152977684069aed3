import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { afterNext, type Next, nextOf } from '../../src/garment/next/next.ts';
import { stepsMade, workLines } from '../../src/garment/next/work-lines.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const CM = 80_000;
const HOOKS = homeOf('hooks', '', 'marks');
const FIRST = homeOf('hem', '', 'first-press');
const STITCH = homeOf('hem', '', 'stitch');
const LINE = homeOf('hem', '', 'hem-line');

/** Invented: a double hem, and hooks on an edge. */
const jacket = (edge: string) =>
  garmentOf({
    quantities: { edge: { name: 'Edge', kind: 'length', rank: 1, parts: typed(edge) } },
    works: {
      hem: {
        name: 'Back hem',
        calculation: 'hem',
        rank: 2,
        fields: {
          depth: typed('2'),
          style: typed('unequal'),
          turn: typed('0.7'),
          edgeStitch: typed('0.2'),
        },
      },
      hooks: {
        name: 'Hooks',
        calculation: 'closures',
        rank: 1,
        fields: {
          opening: [quantity('edge')],
          count: typed('3'),
          top: typed('1'),
          bottom: typed('1'),
          by: typed('count'),
          ends: typed('given'),
        },
      },
    },
  });

const pressed = (state: State, action: object) =>
  act(state, { tape: 8000, id: `f${state.record.edits}`, now: 1, ...action } as Action).state;

/** What is shown, with lengths in centimetres. */
function seen(next: Next) {
  if (next.kind !== 'step') return next.kind;
  const then = next.after && Math.round(next.after.value / 800) / 100;
  return [next.step.home, Math.round(next.value / 800) / 100, next.mark?.rank, then];
}

test('the key goes through the stages, mark by mark, and ends with all made', () => {
  let state = begin(jacket('11'), KNOWN);
  const shown = [];
  for (let next = nextOf(state.answer); next.kind === 'step'; next = nextOf(state.answer)) {
    shown.push(seen(next));
    state = pressed(state, { do: 'make', home: next.step.home });
  }
  expect(shown).toEqual([
    [FIRST, 0.7, undefined, 2.7],
    [LINE, 2.7, undefined, 4.5],
    [STITCH, 4.5, undefined, undefined],
    [HOOKS, 1, 0, 5.5],
    [HOOKS, 5.5, 1, 10],
    [HOOKS, 10, 2, undefined],
  ]);
  expect(nextOf(state.answer)).toEqual({ kind: 'all made' });
  expect(stepsMade(state.answer)).toEqual({ made: 4, of: 4 });
  expect(workLines(state.answer).map(({ name, state: how }) => [name, how])).toEqual([
    ['Hooks', 'done'],
    ['Back hem', 'done'],
  ]);
});

test('the step in hand stays until it is made, then it goes on from there and round', () => {
  const state = begin(jacket('11'), KNOWN);
  expect(seen(nextOf(state.answer, HOOKS))).toEqual([HOOKS, 1, 0, 5.5]);
  let done = state;
  for (let i = 0; i < 3; i++) done = pressed(done, { do: 'make', home: HOOKS });
  expect(seen(nextOf(done.answer, HOOKS))).toEqual([FIRST, 0.7, undefined, 2.7]);
  expect(afterNext(state.answer, FIRST)).toBe(LINE);
  expect(afterNext(done.answer, STITCH)).toBe(FIRST);
});

test('what can be made goes before what is missing; with nothing else the missing number is named', () => {
  const state = begin(jacket(''), KNOWN);
  expect(seen(nextOf(state.answer))).toEqual([FIRST, 0.7, undefined, 2.7]);
  expect(nextOf(state.answer, HOOKS)).toMatchObject({
    kind: 'missing',
    trouble: { kind: 'waits', for: homeOf('edge') },
  });
  expect(workLines(state.answer).map(({ name, waits }) => [name, waits])).toEqual([
    ['Hooks', true],
    ['Back hem', false],
  ]);
});

test('a row that was made otherwise than asked shows its decision, and goes on once it is taken', () => {
  let state = begin(jacket('11'), KNOWN);
  state = pressed(state, { do: 'make', home: HOOKS, measured: 1.4 * CM });
  expect(nextOf(state.answer, HOOKS)).toEqual({ kind: 'decide', home: HOOKS });
  expect(workLines(state.answer)[0]?.conflict).toBe(true);
  state = pressed(state, { do: 'decide', home: HOOKS, way: 'spread' });
  expect(seen(nextOf(state.answer, HOOKS))).toEqual([HOOKS, 5.7, 1, 10]);
});

test('“then” is what the key shows next: nothing of its own work where another one’s cut comes first', () => {
  const facing = (rank: number) => ({
    ...{ name: `Facing ${rank}`, calculation: 'facing', rank },
    fields: {
      ...{ depth: typed('5'), kind: typed('shaped'), seam: typed('1'), turn: typed('0.6') },
      edgeStitch: typed('0.2'),
    },
  });
  let state = begin(garmentOf({ works: { neck: facing(1), sleeve: facing(2) } }), KNOWN);
  const shown: [string, number | undefined][] = [];
  for (let next = nextOf(state.answer); next.kind === 'step'; ) {
    const { home } = next.step;
    shown.push([home, next.after?.value]);
    state = pressed(state, { do: 'make', home });
    const now = nextOf(state.answer, home);
    if (next.after) expect(now).toMatchObject({ step: { home: next.after.home } });
    next = now as typeof next;
  }
  expect(shown[0]).toEqual([homeOf('neck', '', 'facing-deep'), undefined]);
  expect(shown.filter(([, then]) => then !== undefined)).toHaveLength(4);
});

test('a garment without steps says so', () => {
  expect(nextOf(begin(garmentOf({}), KNOWN).answer)).toEqual({ kind: 'nothing yet' });
});
