import { expect, test } from 'vitest';
import type { Calculation } from '../../src/calculation/calculation.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../src/garment/garment.ts';
import { differing, withMark } from '../../src/garment/mark-made.ts';
import { spacedAnew, unspaced } from '../../src/garment/spacing.ts';
import { hereIn, loadKnown, stopsOf } from '../../src/garment/stops.ts';
import { benchOf } from '../controls/helpers.ts';

const CM = 80_000;
const bench = benchOf();
const LIST: Readonly<Record<string, () => Promise<Calculation>>> = {
  closures: async () => closures,
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

async function followed(garment = coat, only?: string) {
  return stopsOf(garment, await loadKnown(garment, LIST), bench, only);
}

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

test('the rest is spaced anew round what was made, and that can be taken back', async () => {
  const [plan] = (await followed()).stops;
  if (!plan) throw new Error('no stop');
  const made = withMark(withMark(hooks, plan, '1', ''), plan, '2', '16.1 cm');
  const [stop] = (await followed(withKept(coat, made, 2))).stops;
  const spaced = stop && spacedAnew(closures, stop, bench);
  if (!spaced?.ok) throw new Error('not spaced');
  const anew = spaced.change(made);
  expect(anew.draft.sewn).toBe('1 cm; 16.1 cm');
  expect(anew.runs[0]?.planned).toEqual({ '1': CM, '2': 15.5 * CM, '3': 30 * CM });
  expect(anew.runs[0]?.made).toEqual({ '1': '', '2': '16.1 cm' });
  const back = unspaced(anew, made, bench);
  expect(back.draft).toEqual(made.draft);
  expect(back.runs).toEqual(made.runs);
});
