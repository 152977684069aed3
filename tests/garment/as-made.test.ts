import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  inMm,
  madeOf,
  placeOf,
  progressOf,
  withItsUnit,
  withMade,
} from '../../src/garment/as-made.ts';
import type { KeptRun } from '../../src/garment/garment.ts';
import { madeElsewhere } from '../../src/garment/made-elsewhere.ts';
import { paired } from '../../src/garment/paired.ts';
import { plannedAnew, withMeasures } from '../../src/garment/planned-anew.ts';
import type { PlannedMark } from '../../src/garment/which-mark.ts';
import { UNITS_PER_INCH, UNITS_PER_MM } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';

const CM = 10 * UNITS_PER_MM;
const STEP = UNITS_PER_MM;
const mark = (label: string, cm: number, sewn = false): PlannedMark => ({
  label,
  at: cm * CM,
  sewn,
  alike: true,
});

const run: KeptRun = {
  planned: { '1': 1 * CM, '2': 3 * CM, '3': 5 * CM },
  made: { '1': '', '2': '3.4 cm' },
};

test('planned stands beside as made, for every mark that was measured', () => {
  expect(madeElsewhere(run)).toEqual([
    { label: '2', planned: 3 * CM, made: 3.4 * CM, typed: '3.4 cm' },
  ]);
  expect(madeElsewhere({ planned: {}, made: { '2': '1 in', '3': '15.6' } })).toEqual([
    { label: '2', planned: undefined, made: UNITS_PER_INCH, typed: '1 in' },
    { label: '3', planned: undefined, made: undefined, typed: '15.6' },
  ]);
  expect(progressOf([run])).toEqual({ marks: 3, made: 2, elsewhere: 1, extra: 0 });
});

test('a mark is made, measured anew, and not made after all', () => {
  const made = withMade(run, '3', '5.1 cm');
  expect(made.made).toEqual({ ...run.made, '3': '5.1 cm' });
  expect(withMade(made, '3', '').made['3']).toBe('');
  expect(withMade(made, '3', undefined)).toEqual(run);
});

test('only what was measured since the opening is taken over', () => {
  const opened = new Map([['2', '3.4 cm']]);
  // Another tab has measured 3 meanwhile; here 1 was.
  const there = withMade(run, '3', '5.2 cm');
  const now = new Map([
    ['1', '1.1 cm'],
    ['2', '3.4 cm'],
  ]);
  expect(withMeasures(there, opened, now).made).toEqual({
    '1': '1.1 cm',
    '2': '3.4 cm',
    '3': '5.2 cm',
  });
  // What was opened with and not touched gives way to what was measured anew elsewhere.
  const anew = withMade(run, '2', '3.6 cm');
  expect(withMeasures(anew, opened, opened).made['2']).toBe('3.6 cm');
  // A measure taken away is as planned, and still made.
  expect(withMeasures(run, opened, new Map()).made).toEqual({ '1': '', '2': '' });
});

test('a run kept again keeps what was made where it was made', () => {
  const again = plannedAnew(run, [mark('1', 1.5), mark('2', 3.5), mark('3', 5.5)], STEP);
  expect(again).toEqual({
    planned: { '1': 1.5 * CM, '2': 3.5 * CM, '3': 5.5 * CM },
    made: { '1': '10 mm', '2': '3.4 cm' },
  });
  expect(plannedAnew(run, [mark('1', 1), mark('2', 3), mark('3', 5)], STEP)).toEqual(run);
});

test('what is made and no longer asked for stays where it was made, after the plan', () => {
  expect(plannedAnew(run, [mark('1', 1)], STEP)).toEqual({
    planned: { '1': CM },
    made: { '1': '', '2': '3.4 cm' },
  });
  const all: KeptRun = { planned: run.planned, made: { '1': '', '2': '', '3': '' } };
  expect(plannedAnew(all, [mark('1', 1), mark('2', 5)], STEP)).toEqual({
    planned: { '1': 1 * CM, '2': 5 * CM },
    made: { '1': '', '2': '', '3': '30 mm' },
  });
});

// Seven hooks 7.1 cm apart, eight 6.086 (derived here): the lowest one stays where it is made.
const seven = [1.2, 8.3, 15.4, 22.5, 29.6, 36.7, 43.8];
const eight = Array.from({ length: 8 }, (_, i) => 1.2 + (i * 42.6) / 7);
const row = (places: readonly number[]) => places.map((cm, i) => mark(String(i + 1), cm));

test('seven hooks, the first and the last made, changed to eight: no ghost beside the last', () => {
  const kept: KeptRun = {
    planned: Object.fromEntries(row(seven).map(({ label, at }) => [label, at])),
    made: { '1': '', '7': '' },
  };
  const again = plannedAnew(kept, row(eight), STEP);
  expect(again.made).toEqual({ '1': '', '8': '' });
  expect(plannedAnew(again, row(seven), STEP)).toEqual(kept);
});

test('lines that differ from each other keep what was made of each, however they move', () => {
  const lines = [mark('1', 4), mark('2', 9)].map((one) => ({ ...one, alike: false }));
  const kept: KeptRun = { planned: { '1': 1 * CM, '2': 4 * CM }, made: { '2': '' } };
  expect(plannedAnew(kept, lines, STEP).made).toEqual({ '2': '40 mm' });
});

test('a mark made far off keeps its label as long as the plan is as it was', () => {
  const kept: KeptRun = { planned: run.planned, made: { '2': '4.9 cm' } };
  expect(plannedAnew(kept, [mark('1', 1), mark('2', 3), mark('3', 5)], STEP)).toEqual(kept);
});

test('spaced anew, sewn marks keep their first plan beside their measure', () => {
  const marks = [mark('1', 1, true), mark('2', 3.4, true), mark('3', 5.2)];
  expect(plannedAnew(run, marks, STEP)).toEqual({
    planned: { '1': 1 * CM, '2': 3 * CM, '3': 5.2 * CM },
    made: { '1': '', '2': '3.4 cm' },
  });
});

test('sewn within half a graduation of its plan a mark is as planned, a unit further it is not', () => {
  const kept: KeptRun = { planned: { '1': CM }, made: { '1': '' } };
  const sewnAt = (units: number) =>
    plannedAnew(kept, [{ ...mark('1', 1, true), at: units }], STEP).made['1'];
  expect(sewnAt(CM + STEP / 2)).toBe('');
  expect(sewnAt(CM - STEP / 2)).toBe('');
  expect(sewnAt(CM + STEP / 2 + 8)).toBe('10.501 mm');
  expect(sewnAt(CM - STEP / 2 - 8)).toBe('9.499 mm');
});

test('what is made moves by less than the least length there is only in its noise', () => {
  const kept: KeptRun = { planned: { '1': CM }, made: { '1': '' } };
  const movedTo = (units: number) =>
    plannedAnew(kept, [{ ...mark('1', 1), at: units }], STEP).made['1'];
  expect(movedTo(CM + 0.5)).toBe('');
  expect(movedTo(CM + 1)).toBe('10 mm');
  expect(movedTo(CM - 1)).toBe('10 mm');
  // Measured where it is planned by now: as planned.
  const measured: KeptRun = { planned: { '1': CM }, made: { '1': '12 mm' } };
  expect(plannedAnew(measured, [mark('1', 1.2)], STEP).made).toEqual({ '1': '' });
  expect(plannedAnew(measured, [mark('1', 1.3)], STEP).made).toEqual({ '1': '12 mm' });
});

test('what can’t be read stays with its number while that is free, and else comes last', () => {
  const odd: KeptRun = { planned: run.planned, made: { '1': '', '2': 'at the dart', '3': '' } };
  const three = [mark('1', 1.1), mark('2', 3.1), mark('3', 5.1)];
  expect(plannedAnew(odd, three, STEP).made).toEqual({
    ...{ '1': '10 mm', '2': 'at the dart', '3': '50 mm' },
  });
  // Two are left: the two that can be read are nearest to them.
  expect(plannedAnew(odd, [mark('1', 1.1), mark('2', 5.1)], STEP).made).toEqual({
    ...{ '1': '10 mm', '2': '50 mm', '3': 'at the dart' },
  });
});

test('what is made in another order than it is numbered is found by where it is', () => {
  const crossed: KeptRun = { planned: run.planned, made: { '1': '5 cm', '2': '1 cm' } };
  const near = { '1': '1 cm', '3': '5 cm' };
  const three = [mark('1', 1.1), mark('2', 3.1), mark('3', 5.1)];
  expect(plannedAnew(crossed, three, STEP).made).toEqual(near);
  expect(plannedAnew(crossed, three.reverse(), STEP).made).toEqual(near);
});

test('one line unlike the others, and all are known by their labels', () => {
  const lines = [mark('1', 4), { ...mark('2', 9), alike: false }];
  const kept: KeptRun = { planned: { '1': 1 * CM, '2': 4 * CM }, made: { '2': '' } };
  expect(plannedAnew(kept, lines, STEP).made).toEqual({ '2': '40 mm' });
});

test('what is made without a plan is said as it was, never as a place', () => {
  const unplanned: KeptRun = { planned: {}, made: { '1': '', '2': '' } };
  const one = [{ ...mark('1', 4), alike: false }];
  expect(plannedAnew(unplanned, one, STEP).made).toEqual({ '1': '', '2': '' });
});

test('what is not asked for any more never takes the number of a mark that is', () => {
  const kept: KeptRun = { planned: { '1': CM }, made: { '1': '1.2 cm' } };
  const others = [mark('2', 3), mark('3', 5)].map((one) => ({ ...one, alike: false }));
  expect(plannedAnew(kept, others, STEP).made).toEqual({ '4': '1.2 cm' });
});

test('a mark not made after all is gone from what is made, and no name is made by itself', () => {
  expect(Object.keys(withMade(run, '2', undefined).made)).toEqual(['1']);
  expect(madeOf({ planned: {}, made: {} }, 'constructor')).toBeUndefined();
  expect(madeOf(undefined, '1')).toBeUndefined();
  expect(withItsUnit(' 4 ', 'cm')).toBe('4 cm');
});

test('of all runs together: what is asked for, made, made elsewhere, and not asked for any more', () => {
  const extra: KeptRun = { planned: { '1': CM }, made: { '1': '', '2': '3 cm', '3': '' } };
  const unplanned: KeptRun = { planned: {}, made: { '1': '' } };
  expect(progressOf([run, extra, unplanned])).toEqual({
    ...{ marks: 5, made: 4, elsewhere: 2, extra: 2 },
  });
  expect(progressOf([])).toEqual({ marks: 0, made: 0, elsewhere: 0, extra: 0 });
});

test('a sewn mark that has another number now takes what was said of it along', () => {
  const far: KeptRun = { planned: run.planned, made: { '3': '8 cm' } };
  const marks = [mark('1', 2), mark('2', 8, true), mark('3', 9)];
  expect(plannedAnew(far, marks, STEP)).toEqual({
    planned: { '1': 2 * CM, '2': 5 * CM, '3': 9 * CM },
    made: { '2': '8 cm' },
  });
});

test('a place typed as sewn is as made, with the plan of the mark of its number', () => {
  const marks = [mark('1', 1.2, true), mark('2', 3)];
  const kept: KeptRun = { planned: run.planned, made: {} };
  expect(plannedAnew(kept, marks, STEP).made).toEqual({ '1': '12 mm' });
  expect(plannedAnew(kept, marks, STEP).planned['1']).toBe(CM);
});

test('sewn elsewhere than it was said to be made, a mark is where it is sewn', () => {
  const said = (typed: string, cm: number) =>
    plannedAnew({ planned: run.planned, made: { '2': typed } }, [mark('2', cm, true)], STEP).made;
  expect(said('3.4 cm', 3.4)).toEqual({ '2': '3.4 cm' });
  expect(said('3.4 cm', 3.5)).toEqual({ '2': '35 mm' });
});

test('of equal ways to pair the one nearer the datum is taken', () => {
  expect(paired([5], [4, 6])).toEqual([0]);
  expect(paired([5, 9], [4, 6, 8, 10])).toEqual([0, 2]);
  expect(paired([], [4, 6])).toEqual([]);
});

test('a place typed as sewn, of a mark that was not said to be made, is said as it was typed', () => {
  const kept: KeptRun = { planned: run.planned, made: {} };
  // Within half a graduation of its plan too: no one said that it was made as planned.
  expect(plannedAnew(kept, [mark('1', 1.02, true)], STEP).made).toEqual({ '1': '10.2 mm' });
  expect(plannedAnew({ planned: {}, made: {} }, [mark('1', 1, true)], STEP)).toEqual({
    planned: { '1': CM },
    made: { '1': '10 mm' },
  });
});

/** Where everything made of a run is, in order, in whole 1/8000 mm. */
const placesOf = ({ planned, made }: KeptRun) =>
  Object.entries(made)
    .map(([label, typed]) => Math.round((typed === '' ? planned[label] : placeOf(typed)) ?? -1))
    .sort((a, b) => a - b);

/** Rows from 2 to 12 marks, of any pitch, and whatever of them is made, some of it elsewhere. */
const rows = fc
  .tuple(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 1, max: 90 }), fc.nat(40))
  .map(([count, pitch, first]) =>
    Array.from({ length: count }, (_, i) => mark(String(i + 1), (first + i * pitch) / 10)),
  );
const deeds = fc.array(fc.tuple(fc.nat(11), fc.option(fc.integer({ min: -9, max: 9 }))));
const made = (kept: KeptRun, all: readonly [number, number | null][]) =>
  all.reduce((so, [i, off]) => {
    const label = String(i + 1);
    const at = so.planned[label];
    if (at === undefined || label in so.made) return so;
    return withMade(so, label, off === null ? '' : inMm(Math.max(0, at + off * UNITS_PER_MM)));
  }, kept);

test('law: over any changes of a row what is made stays where it is, once, and nothing is asked for there', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(rows, deeds), { minLength: 1, maxLength: 6 }), (changes) => {
      let kept: KeptRun = { planned: {}, made: {} };
      for (const [marks, all] of changes) {
        const before = placesOf(kept);
        kept = plannedAnew(kept, marks, STEP);
        expect(placesOf(kept)).toEqual(before);
        expect(Object.keys(kept.planned)).toEqual(marks.map(({ label }) => label));
        expect(plannedAnew(kept, marks, STEP)).toEqual(kept);
        if (before.length <= marks.length) {
          const left = marks.filter(({ label }) => !(label in kept.made));
          const asked = left.map(({ at }) => Math.round(at));
          expect(asked.filter((at) => isGhost(at, kept, marks))).toEqual([]);
        }
        kept = made(kept, all);
      }
    }),
    { seed: 12 },
  );
});

/** A mark to make where one is made, while that one counts as another mark, planned elsewhere. */
function isGhost(at: number, kept: KeptRun, marks: readonly PlannedMark[]): boolean {
  return marks.some(({ label, at: own }) => {
    const typed = kept.made[label];
    if (typed === undefined || Math.round(own) === at) return false;
    return (typed === '' ? Math.round(own) : placeOf(typed)) === at;
  });
}

test('law: pairing keeps the order, and no other pairing of the same is nearer in all', () => {
  const places = fc.array(fc.nat(60), { maxLength: 6 }).map((all) => all.sort((a, b) => a - b));
  const least = (few: readonly number[], many: readonly number[]): number => {
    const [first, ...rest] = few;
    if (first === undefined) return 0;
    const ways = many
      .slice(0, many.length - rest.length)
      .map((one, i) => Math.abs(one - first) + least(rest, many.slice(i + 1)));
    return Math.min(...ways);
  };
  fc.assert(
    fc.property(places, places, (one, other) => {
      const [few, many] = one.length > other.length ? [other, one] : [one, other];
      const partners = paired(few, many);
      expect([...new Set(partners)].sort((a, b) => a - b)).toEqual(partners);
      const far = partners.map((j, i) => Math.abs((many[j] ?? Number.NaN) - (few[i] ?? 0)));
      expect(far.reduce((sum, each) => sum + each, 0)).toBe(least(few, many));
    }),
    { seed: 12 },
  );
});

test('law: a measure with its unit means the same on every bench', () => {
  const typed = fc.oneof(
    fc.integer({ min: 0, max: 9999 }).map((tenths) => String(tenths / 10)),
    fc.tuple(fc.nat(99), fc.integer({ min: 1, max: 15 })).map(([a, b]) => `${a} ${b}/16`),
  );
  fc.assert(
    fc.property(typed, fc.constantFrom('mm', 'cm', 'in'), (text, unit) => {
      const written = withItsUnit(text, unit);
      const meant = readLength(text, unit);
      for (const bench of ['mm', 'cm', 'in'] as const) {
        expect(readLength(written, bench)).toEqual(meant);
      }
    }),
  );
});

test('a sum whose parts have no unit is written out exactly', () => {
  expect(withItsUnit('15 + 0.6', 'cm')).toBe('156 mm');
  expect(withItsUnit('5 in', 'cm')).toBe('5 in');
  expect(withItsUnit('what', 'cm')).toBe('what');
  expect(withItsUnit('15.6', undefined)).toBe('15.6');
});
