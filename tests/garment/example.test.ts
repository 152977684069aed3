import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type Refused, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { KNOWN } from './trial/known.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const CM = 80_000;
const MM_TAPE = 8000;

/** A garment in hand, with what a press on the key says. */
function inHand(): { state(): State; press(action: Presses): Refused | undefined } {
  let [state, n] = [begin(waistcoat, KNOWN), 0];
  return {
    state: () => state,
    press: (action) => {
      n += 1;
      const done = act(state, { tape: MM_TAPE, id: `f${n}`, now: n, ...action } as Action);
      state = done.state;
      return done.refused;
    },
  };
}
type Presses = { do: Action['do'] } & Readonly<Record<string, unknown>>;

function placesOf(run: unknown): number[] {
  return (run as Run).marks.map(({ at }) => Math.round(at / 800) / 100);
}

function rowOf(state: State, home: string): number[] {
  const result = state.answer.values.get(home);
  if (!result?.ok) throw new Error(`${home}: ${JSON.stringify(result)}`);
  return placesOf(result.value);
}

const wayOf = (state: State, home: string, way: string) =>
  waysOutOf(state, home).find((one) => one.way === way)?.row?.run;

test('seven hooks, the third made at 15.8 instead of 15.4: a decision, and the rest is spread', () => {
  const { state, press } = inHand();
  for (const measured of [undefined, undefined, 15.8 * CM]) {
    expect(press({ do: 'make', home: HOOKS, ...(measured && { measured }) })).toBeUndefined();
  }
  expect(rowOf(state(), HOOKS).slice(0, 3)).toEqual([1.2, 8.3, 15.8]);
  expect(press({ do: 'make', home: HOOKS })).toEqual({ why: 'undecided' });
  expect(state().answer.conflicts).toEqual([{ home: HOOKS, facts: ['f3'] }]);
  expect(waysOutOf(state(), HOOKS).map(({ way }) => way)).toEqual([
    'as-begun',
    'spread',
    'asked',
    'count:8',
    'count:6',
  ]);
  press({ do: 'decide', home: HOOKS, way: 'spread' });
  expect(rowOf(state(), HOOKS)).toEqual([1.2, 8.3, 15.8, 22.8, 29.8, 36.8, 43.8]);
  for (let i = 0; i < 4; i++) expect(press({ do: 'make', home: HOOKS })).toBeUndefined();
  expect(press({ do: 'make', home: HOOKS })).toEqual({ why: 'all made' });
  expect(state().answer.values.get(HOOKS)).toMatchObject({ state: 'made' });
});

test('an armhole read as 62.4 ± 0.2 takes 78 holes, 79 if it is 0.4 more', () => {
  const { state } = inHand();
  const count = state().answer.values.get(homeOf('strip', '', 'count'));
  expect(count).toMatchObject({ ok: true, value: 78, ends: {} });
  const last = state().answer.values.get(homeOf('strip', '', 'last'));
  expect(last && plusMinus(last)).toBeCloseTo(mm(2), 6);
  const { press, state: measured } = inHand();
  press({ do: 'measure', quantity: 'armhole', measured: 62.8 * CM });
  const now = measured().answer.values.get(homeOf('strip', '', 'count'));
  // 62.8 is where 79 begin, and a tape is known to half its graduation: 78 at its other end.
  expect(now).toMatchObject({ value: 79, ends: { 'f:f1': [78, 79] } });
});

test('measured again as 63.0 with 57 punched: what is left, or a hole more, or as begun', () => {
  const { state, press } = inHand();
  press({ do: 'make', home: HOLES, upTo: 57 });
  expect(state().answer.steps.find(({ home }) => home === HOLES)).toMatchObject({
    made: 57,
    of: 78,
  });
  press({ do: 'measure', quantity: 'armhole', measured: 63 * CM });
  expect(state().answer.conflicts.map(({ home }) => home)).toEqual([HOLES]);
  const step = (run: unknown) => {
    const { marks } = run as Run;
    return Math.round(((marks[60]?.at ?? 0) - (marks[59]?.at ?? 0)) / 80) / 100;
  };
  const [begun] = waysOutOf(state(), HOLES);
  expect(begun?.way).toBe('as-begun');
  // 8 is kept, and the last hole is 1.0 from the cut.
  expect(placesOf(begun?.row?.run).at(-1)).toBe(62);
  expect(placesOf(wayOf(state(), HOLES, 'spread'))).toHaveLength(78);
  expect(step(wayOf(state(), HOLES, 'spread'))).toBe(8.29);
  expect(placesOf(wayOf(state(), HOLES, 'count:79'))).toHaveLength(79);
  expect(step(wayOf(state(), HOLES, 'count:79'))).toBe(7.91);
  press({ do: 'decide', home: HOLES, way: 'count:79' });
  const count = () => state().answer.values.get(homeOf('strip', '', 'count'));
  expect(state().answer.conflicts).toEqual([]);
  expect(count()).toMatchObject({ value: 79 });
  const again = state().log.find(({ what }) => what === 'measure');
  press({ do: 'undo', change: again?.id });
  expect(state().answer.conflicts).toEqual([]);
  expect(count()).toMatchObject({ value: 78 });
});
