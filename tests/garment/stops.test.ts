import { expect, test } from 'vitest';
import type { Calculation } from '../../src/calculation/calculation.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { convert } from '../../src/calculations/convert/convert.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../src/garment/garment.ts';
import { differing, withMark } from '../../src/garment/mark-made.ts';
import { draftFor } from '../../src/garment/plan.ts';
import { hereIn, loadKnown, stopsOf } from '../../src/garment/stops.ts';
import { benchOf } from '../controls/helpers.ts';

const CM = 80_000;
const bench = benchOf();
const LIST: Readonly<Record<string, () => Promise<Calculation>>> = {
  closures: async () => closures,
  convert: async () => convert,
  edging: async () => edging,
  hem: async () => hem,
  gone: () => Promise.reject(new Error('not fetched')),
};

/** Three hooks at 1, 15.5 and 30 cm along 31 cm, their ends given. */
const hooks: Kept = {
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { u: 'cm', opening: '31', count: '3', by: 'count', ends: 'given', top: '1', bottom: '1' },
  runs: [],
};
const kept = (id: string, calculation: string, draft = {}): Kept => ({
  ...hooks,
  id,
  calculation,
  draft,
});
const coat = [
  kept('hem', 'hem', { u: 'cm', depth: 'deep' }),
  kept('new', 'unheard'),
  kept('old', 'gone'),
]
  .concat(hooks)
  .reduce((so, one) => withKept(so, one, 1), newGarment('coat', 'Coat', 1));

/** Read anew each time, as from storage: nothing is left of what was worked out before. */
async function followed(garment = coat, only?: string, list = LIST) {
  const read = structuredClone(garment);
  return stopsOf(read, await loadKnown(read, list), bench, only);
}

const alone = (...all: Kept[]) =>
  all.reduce((so, one) => withKept(so, one, 1), newGarment('coat', 'Coat', 1));

test('every run is a stop; what gives none is said to be unknown, not fetched or without an answer', async () => {
  const { stops, blocked } = await followed();
  expect(stops.map(({ kept, run, canRespace }) => [kept.id, run, canRespace])).toEqual([
    ['hooks', 0, true],
  ]);
  expect(blocked.map(({ kept, why }) => [kept.id, why])).toEqual([
    ['hem', 'faults'],
    ['new', 'unknown'],
    ['old', 'missing'],
  ]);
  expect((await followed(coat, 'hem')).stops).toEqual([]);
});

test('followed alone, nothing else is a stop or said to give none', async () => {
  const { stops, blocked } = await followed(coat, 'hooks');
  expect(stops.map(({ kept }) => kept.id)).toEqual(['hooks']);
  expect(blocked).toEqual([]);
});

test('what gives no answer says why, at which of its fields', async () => {
  const { blocked } = await followed(coat, 'hem');
  const [one] = blocked;
  if (one?.why !== 'faults') throw new Error('no fault');
  expect(one.faults.map(({ field }) => field)).toEqual(['depth']);
  expect(one.fields.some(({ key }) => key === 'depth')).toBe(true);
});

test('a length turned over has no marks, and isn’t fetched; no other name there is stands for one', async () => {
  const only = alone(kept('length', 'convert', { length: '5' }), kept('odd', 'constructor'));
  expect((await loadKnown(only, LIST)).has('convert')).toBe(false);
  const { stops, blocked } = await followed(only);
  expect(stops).toEqual([]);
  expect(blocked.map(({ kept: { id }, why }) => [id, why])).toEqual([['odd', 'unknown']]);
  // Nor where it has been fetched for something else.
  expect(stopsOf(only, new Map([['convert', convert]]), bench, 'length').stops).toEqual([]);
});

/** One level row beside the other along 12 cm: two runs of one calculation. */
const strip = kept('strip', 'edging', { u: 'cm', length: '12', rows: 'level' });

test('each row of a strip is a stop of its own; only a row of closures can be spaced anew', async () => {
  const { stops } = await followed(alone(strip, hooks));
  expect(stops.map(({ kept: { id }, run, oneOfSeveral }) => [id, run, oneOfSeveral])).toEqual([
    ['strip', 0, true],
    ['strip', 1, true],
    ['hooks', 0, false],
  ]);
  expect(stops.map(({ canRespace }) => canRespace)).toEqual([false, false, true]);
});

/** Closures that have, besides their row, one without marks and the same once more. */
const thrice: Calculation = {
  ...closures,
  work(draft, at) {
    const work = closures.work(draft, at);
    if (!work.ok) return work;
    const [row] = work.answer.runs;
    if (!row) throw new Error('no row');
    const without = { ...row, run: { ...row.run, marks: [] } };
    return { ...work, answer: { ...work.answer, runs: [row, without, row] } };
  },
};

test('a run without marks is passed over, and counts as none of several', async () => {
  const { stops } = await followed(alone(hooks), undefined, {
    closures: async () => thrice,
  });
  expect(stops.map(({ run, oneOfSeveral, canRespace }) => [run, oneOfSeveral, canRespace])).toEqual(
    [
      [0, true, true],
      [2, true, false],
    ],
  );
  const one = {
    ...thrice,
    work: (...given: Parameters<Calculation['work']>) => {
      const work = thrice.work(...given);
      return work.ok
        ? { ...work, answer: { ...work.answer, runs: work.answer.runs.slice(0, 2) } }
        : work;
    },
  };
  const single = await followed(alone(hooks), undefined, { closures: async () => one });
  expect(single.stops.map(({ run, oneOfSeveral }) => [run, oneOfSeveral])).toEqual([[0, false]]);
});

test('where a run begins its warnings are said, then its cautions', async () => {
  const [stop] = (await followed()).stops;
  const work = closures.work(draftFor(closures, hooks, bench).draft, bench);
  if (!work.ok) throw new Error('no answer');
  const { warnings, cautions } = work.answer;
  expect(cautions.length).toBeGreaterThan(0);
  expect(stop?.cautions).toEqual([...warnings, ...cautions]);
});

test('a mark made elsewhere lies where it was made, and the plan stays as it was', async () => {
  const runs = [{ planned: {}, made: { '1': '', '2': '16 cm', '3': 'by the dart' } }];
  const [stop] = (await followed(alone({ ...hooks, runs }))).stops;
  const at = (run = stop?.named) => run?.run.marks.map((mark) => mark.at);
  expect(at()).toEqual([CM, 16 * CM, 30 * CM]);
  expect(at(stop?.plan)).toEqual([CM, 15.5 * CM, 30 * CM]);
  // Where nothing was made elsewhere the plan is what is followed.
  const asPlanned = [{ planned: {}, made: { '1': '' } }];
  const [other] = (await followed(alone({ ...hooks, runs: asPlanned }))).stops;
  expect(other?.named).toBe(other?.plan);
});

test('a mark made works nothing out anew, nor draws another run anew; another bench does', async () => {
  let times = 0;
  const counted: Calculation = {
    ...edging,
    work: (...given) => {
      times += 1;
      return edging.work(...given);
    },
  };
  const known = new Map([['edging', counted]]);
  const made = (label: string) => ({ planned: {}, made: { [label]: '1.1 cm' } });
  const second = made('1');
  const before = { ...strip, draft: { ...strip.draft }, runs: [made('1'), second] };
  const first = stopsOf(alone(before), known, bench, undefined).stops;
  const after = { ...before, runs: [made('2'), second] };
  const then = stopsOf(alone(after), known, bench, undefined).stops;
  expect(times).toBe(1);
  expect(then[1]?.named).toBe(first[1]?.named);
  expect(then[0]?.named).not.toBe(first[0]?.named);
  stopsOf(alone(after), known, benchOf({ unit: 'in' }), undefined);
  expect(times).toBe(2);
});

test('an address names a mark; one it can’t name is the first that is not made', async () => {
  const { stops } = await followed();
  expect(hereIn(stops, { k: 'hooks', run: '0', at: '2' })).toEqual({ run: 0, mark: 2 });
  expect(hereIn(stops, { k: 'hooks', run: '0', at: 'end' })).toBeUndefined();
  for (const at of ['3', '-1', '1.5', 'x']) {
    expect(hereIn(stops, { k: 'hooks', run: '0', at })).toEqual({ run: 0, mark: 0 });
  }
  const [stop] = stops;
  if (!stop) throw new Error('no stop');
  const made = withKept(coat, withMark(hooks, stop, '1', ''), 2);
  expect(hereIn((await followed(made)).stops, {})).toEqual({ run: 0, mark: 1 });
  // A run, a mark or a kept one there is not, of an address made for something else.
  const next = { run: 0, mark: 1 };
  for (const other of [{ k: 'gone' }, { run: '1' }, { k: 'gone', run: '1' }]) {
    const named = { k: 'hooks', run: '0', at: '2', ...other };
    expect(hereIn((await followed(made)).stops, named)).toEqual(next);
  }
  const rows = (await followed(alone(strip, hooks))).stops;
  expect(hereIn(rows, { k: 'strip', run: '1', at: '2' })).toEqual({ run: 1, mark: 2 });
  expect(hereIn(rows, { k: 'hooks', run: '0', at: '1' })).toEqual({ run: 2, mark: 1 });
  expect(hereIn([], { k: 'hooks', run: '0', at: '1' })).toBeUndefined();
});

test('a mark made keeps the plan of its run; taken back, it is to make again', async () => {
  const [stop] = (await followed()).stops;
  if (!stop) throw new Error('no stop');
  const made = withMark(hooks, stop, '2', '16 cm');
  expect(made.runs).toEqual([
    { planned: { '1': CM, '2': 15.5 * CM, '3': 30 * CM }, made: { '2': '16 cm' } },
  ]);
  expect(withMark(made, stop, '2', undefined).runs[0]?.made).toEqual({});
  expect(hooks.runs).toEqual([]);
});

test('a mark made in one row leaves the others as they are', async () => {
  const [, second] = (await followed(alone(strip))).stops;
  if (!second) throw new Error('no second row');
  const [none, made] = withMark(strip, second, '2', '').runs;
  expect(none).toEqual({ planned: {}, made: {} });
  expect(made?.made).toEqual({ '2': '' });
  const planned = { '1': CM };
  const both = {
    ...strip,
    runs: [
      { planned, made: { '1': '' } },
      { planned, made: {} },
    ],
  };
  const anew = withMark(both, second, '2', '');
  expect(anew.runs[0]).toBe(both.runs[0]);
  // What was planned when it was kept counts, not what would be planned today.
  expect(anew.runs[1]?.planned['1']).toBe(CM);
});

test('a measure that is the place as the tape shows it is as planned', async () => {
  const [stop] = (await followed()).stops;
  if (!stop) throw new Error('no stop');
  expect(differing(stop, '2', '15.5', bench)).toBe('');
  expect(differing(stop, '2', '155 mm', bench)).toBe('');
  expect(differing(stop, '2', '15.6', bench)).toBe('15.6');
  expect(differing(stop, '2', 'about', bench)).toBe('about');
  expect(differing(stop, '9', '15.5', bench)).toBe('15.5');
  expect(differing(stop, '2', undefined, bench)).toBeUndefined();
});
