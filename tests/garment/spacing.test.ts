import { expect, test } from 'vitest';
import type { Calculation } from '../../src/calculation/calculation.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, type KeptRun, newGarment } from '../../src/garment/garment.ts';
import { spacedAnew, unspaced } from '../../src/garment/spacing.ts';
import type { Stop } from '../../src/garment/stop.ts';
import { stopsOf } from '../../src/garment/stops.ts';
import { benchOf } from '../controls/helpers.ts';

const CM = 80_000;
const bench = benchOf();
const known = new Map<string, Calculation>([
  ['closures', closures],
  ['hem', hem],
]);

/** Four hooks at 1, 11, 21 and 31 cm along 32 cm, their ends given. */
const hooks: Kept = {
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { u: 'cm', opening: '32', count: '4', by: 'count', ends: 'given', top: '1', bottom: '1' },
  runs: [],
};
const PLANNED = { '1': CM, '2': 11 * CM, '3': 21 * CM, '4': 31 * CM };
const withMade = (made: KeptRun['made'], kept = hooks): Kept => ({
  ...kept,
  runs: [{ planned: kept.runs[0]?.planned ?? PLANNED, made }],
});
function stopOf(kept: Kept): Stop {
  const garment = withKept(newGarment('coat', 'Coat', 1), structuredClone(kept), 2);
  const [stop] = stopsOf(garment, known, bench, undefined).stops;
  if (!stop) throw new Error('no stop');
  return stop;
}
function anewOf(kept: Kept): Kept {
  const spaced = spacedAnew(closures, stopOf(kept), bench);
  if (!spaced?.ok) throw new Error('not spaced');
  return spaced.change(kept);
}

test('the rest is spaced anew round what was made, each where it was made or as the tape shows it', () => {
  const anew = anewOf(withMade({ '1': '', '2': '12 cm' }));
  expect(anew.draft).toMatchObject({ sewn: '1 cm; 12 cm', count: '4' });
  expect('made' in anew.draft).toBe(false);
  // Half of the way from 12 to 31; what is sewn keeps its plan beside where it is.
  expect(anew.runs).toEqual([
    {
      planned: { '1': CM, '2': 11 * CM, '3': 21.5 * CM, '4': 31 * CM },
      made: { '1': '', '2': '12 cm' },
    },
  ]);
});

test('what was made in another order than it was planned is named in the order it lies in', () => {
  const anew = anewOf(withMade({ '1': '12 cm', '2': '9 mm', '4': '' }));
  expect(anew.draft.sewn).toBe('9 mm; 12 cm; 31 cm');
});

test('what can’t be read is no place to space around', () => {
  expect(anewOf(withMade({ '1': '', '2': 'by the dart' })).draft.sewn).toBe('1 cm');
});

test('made where no row can go on, it is said at which field', () => {
  const spaced = spacedAnew(closures, stopOf(withMade({ '1': '40 cm' })), bench);
  if (!spaced || spaced.ok) throw new Error('spaced');
  expect(spaced.fault.faults.map(({ field }) => field)).toEqual(['sewn']);
  expect(spaced.fault.fields.some(({ key }) => key === 'sewn')).toBe(true);
});

test('lines of a hem are not spaced anew: each has its own measure', () => {
  const kept = { ...hooks, calculation: 'hem', draft: { u: 'cm', depth: '2' } };
  expect(spacedAnew(hem, stopOf(kept), bench)).toBeUndefined();
});

test('taken back with nothing made since, the spacing is what it was', () => {
  const before = withMade({ '1': '', '2': '12 cm' });
  expect(unspaced(anewOf(before), before, bench)).toEqual(before);
  expect(unspaced({ ...anewOf(before), runs: [] }, before, bench).runs).toEqual(before.runs);
  // Its name may have been changed since.
  const named = { ...anewOf(before), name: 'Front hooks' };
  expect(unspaced(named, before, bench)).toEqual({ ...before, name: 'Front hooks' });
});

test('taken back, what was made since stays where it was made', () => {
  const before = withMade({ '1': '', '2': '12 cm' });
  const anew = anewOf(before);
  const since = withMade({ ...anew.runs[0]?.made, '3': '' }, anew);
  expect(unspaced(since, before, bench).runs).toEqual([
    { planned: PLANNED, made: { '1': '', '2': '12 cm', '3': '215 mm' } },
  ]);
});

test('taken back, what was made since is of the mark that is there then', () => {
  const before = withMade({ '1': '', '2': '12 cm' });
  const anew = anewOf(before);
  const since = withMade({ ...anew.runs[0]?.made, '3': '30.9 cm' }, anew);
  expect(unspaced(since, before, bench).runs).toEqual([
    { planned: PLANNED, made: { '1': '', '2': '12 cm', '4': '30.9 cm' } },
  ]);
});
