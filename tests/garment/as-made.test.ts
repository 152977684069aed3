import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inMm, progressOf, withItsUnit, withMade } from '../../src/garment/as-made.ts';
import type { KeptRun } from '../../src/garment/garment.ts';
import { madeElsewhere } from '../../src/garment/made-elsewhere.ts';
import {
  measuredAt,
  type PlannedMark,
  plannedAnew,
  withMeasures,
} from '../../src/garment/planned-anew.ts';
import { UNITS_PER_INCH, UNITS_PER_MM } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';

const CM = 10 * UNITS_PER_MM;
const STEP = UNITS_PER_MM;
const own = ({ label }: PlannedMark) => label;
const mark = (label: string, cm: number, sewn = false): PlannedMark => ({
  label,
  at: cm * CM,
  sewn,
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
  expect(progressOf([run])).toEqual({ marks: 3, made: 2, elsewhere: 1 });
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
  const again = plannedAnew(run, [mark('1', 1.5), mark('2', 3.5), mark('3', 5.5)], own, STEP);
  expect(again).toEqual({
    planned: { '1': 1.5 * CM, '2': 3.5 * CM, '3': 5.5 * CM },
    made: { '1': '10 mm', '2': '3.4 cm' },
  });
  expect(plannedAnew(run, [mark('1', 1), mark('2', 3), mark('3', 5)], own, STEP)).toEqual(run);
});

test('what is made of a mark that is no longer planned stays, with its plan', () => {
  expect(plannedAnew(run, [mark('1', 1)], own, STEP)).toEqual({
    planned: { '1': CM, '2': 3 * CM },
    made: run.made,
  });
});

test('spaced anew, sewn marks keep their first plan beside their measure', () => {
  const marks = [mark('1', 1, true), mark('2', 3.4, true), mark('3', 5.2)];
  expect(plannedAnew(run, marks, own, STEP)).toEqual({
    planned: { '1': 1 * CM, '2': 3 * CM, '3': 5.2 * CM },
    made: { '1': '', '2': '3.4 cm' },
  });
});

test('a sewn mark that has another number now takes what was said of it along', () => {
  const far: KeptRun = { planned: run.planned, made: { '3': '8 cm' } };
  const marks = [mark('1', 2), mark('2', 8, true), mark('3', 9)];
  expect(plannedAnew(far, marks, measuredAt(far), STEP)).toEqual({
    planned: { '1': 2 * CM, '2': 5 * CM, '3': 9 * CM },
    made: { '2': '8 cm' },
  });
});

test('a place typed as sewn is as made, with the plan of the mark of its number', () => {
  const marks = [mark('1', 1.2, true), mark('2', 3)];
  const kept: KeptRun = { planned: run.planned, made: {} };
  expect(plannedAnew(kept, marks, measuredAt(kept), STEP).made).toEqual({ '1': '12 mm' });
  expect(plannedAnew(kept, marks, measuredAt(kept), STEP).planned['1']).toBe(CM);
});

test('law: nothing measured is ever dropped by keeping again', () => {
  const labels = fc.constantFrom('1', '2', '3', '4', '5');
  const places = fc.integer({ min: 0, max: 40_000 });
  const runs = fc.record({
    planned: fc.dictionary(labels, places, { noNullPrototype: true }),
    made: fc.dictionary(labels, fc.option(places.map(inMm), { nil: '' }), {
      noNullPrototype: true,
    }),
  });
  const marks = fc.uniqueArray(fc.record({ label: labels, at: places, sewn: fc.constant(false) }), {
    selector: ({ label }) => label,
  });
  fc.assert(
    fc.property(runs, marks, (old, now) => {
      const again = plannedAnew(old, now, measuredAt(old), STEP);
      for (const [label, typed] of Object.entries(old.made)) {
        expect(again.made[label]).toBeDefined();
        if (typed !== '') expect(again.made[label]).toBe(typed);
      }
      expect(plannedAnew(again, now, measuredAt(again), STEP)).toEqual(again);
    }),
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
