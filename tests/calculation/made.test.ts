import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  isFollowKey,
  planOf,
  readMade,
  recordOf,
  withRecord,
  writeMade,
} from '../../src/calculation/made.ts';
import { withUnits } from '../../src/calculation/with-units.ts';
import { exactLength, length } from '../../src/lengths/length.ts';
import { readLengths } from '../../src/lengths/read-lengths.ts';

test('what was measured is kept by mark, as typed', () => {
  const made = readMade(writeMade(new Map(), '3', '15.6'));
  expect([...made]).toEqual([['3', '15.6']]);
  expect(writeMade(made, '5', '30 1/8 in')).toBe('3=15.6; 5=30 1/8 in');
  expect(writeMade(made, '3', '')).toBe('');
});

test('nonsense in an address is passed over', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      for (const [label, typed] of readMade(text)) {
        expect(label).not.toBe('');
        expect(typed).not.toBe('');
      }
    }),
  );
});

const runOf = (...places: number[]) => ({
  datum: 'top-edge' as const,
  length: length(1000),
  marks: places.map((at, i) => ({
    at: exactLength(at),
    label: String(i + 1),
    kind: 'closure' as const,
  })),
});

test('a plan is another one where a mark is, or where there is one more', () => {
  expect(planOf(runOf(1, 2, 3))).toBe(planOf(runOf(1, 2, 3)));
  expect(planOf(runOf(1, 2, 4))).not.toBe(planOf(runOf(1, 2, 3)));
  expect(planOf(runOf(1, 2))).not.toBe(planOf(runOf(1, 2, 3)));
});

test('what is followed is no field; what is left of a hem is', () => {
  for (const key of ['at', 'at-2', 'made', 'was-3', 'plan', 'earlier-2', 'run', 'asked']) {
    expect(isFollowKey(key), key).toBe(true);
  }
  for (const key of ['left', 'count', 'atelier', 'plans'])
    expect(isFollowKey(key), key).toBe(false);
});

test('law: what is measured on a plan is seen on that one alone, and lost on none', () => {
  const plans = [runOf(1, 2, 3), runOf(1, 2, 4), runOf(1, 2), runOf(5)];
  const deeds = fc.array(
    fc.record({
      plan: fc.nat(plans.length - 1),
      label: fc.constantFrom('1', '2', '3'),
      typed: fc.nat(99).map((mm) => `${mm} mm`),
    }),
  );
  fc.assert(
    fc.property(deeds, (all) => {
      const known = plans.map(() => new Map<string, string>());
      let draft = {};
      for (const { plan, label, typed } of all) {
        const run = plans[plan] ?? runOf();
        const { made } = recordOf(draft, 0, run);
        draft = withRecord(draft, 0, run, { made: writeMade(made, label, typed) });
        known[plan]?.set(label, typed);
        for (const [i, its] of known.entries()) {
          expect(recordOf(draft, 0, plans[i] ?? runOf()).made).toEqual(its);
        }
      }
    }),
    { seed: 12 },
  );
});

test('a bare number gets its unit written, so that it means the same on another bench', () => {
  expect(withUnits('18 1/4', 'in')).toBe('18 1/4 in');
  expect(withUnits('1.2; 8.3', 'cm')).toBe('1.2 cm; 8.3 cm');
  expect(withUnits('12 ÷ 7', 'cm')).toBe('12 cm ÷ 7');
  expect(withUnits('2 × (3 + 4)', 'cm')).toBe('2 × (3 cm + 4 cm)');
  expect(withUnits('(46 − 1.2) ÷ 6 + 2 mm', 'cm')).toBe('(46 cm − 1.2 cm) ÷ 6 + 2 mm');
  expect(withUnits('(3 + 4) × (1 + 1)', 'cm')).toBe('((3 + 4) × (1 + 1)) cm');
  expect(withUnits('2 × 5/8', 'in')).toBe('2 × 5/8 in');
  expect(withUnits('5/8 in', 'cm')).toBe('5/8 in');
  expect(withUnits('12 -5/8', 'in')).toBe('12 -5/8');
  expect(withUnits('', 'cm')).toBe('');
});

// 39,371 in is 1000.02 m; the same number of centimetres is 394 m, which would be taken.
test('one of more than a kilometre gets it, too: read in another unit it would be taken', () => {
  expect(withUnits('39371', 'in')).toBe('39371 in');
  expect(withUnits('39371 in', 'cm')).toBe('39371 in');
  expect(withUnits('5; 100001', 'cm')).toBe('5 cm; 100001 cm');
});

const number = fc.constantFrom(
  ...['12', '4.5', '4,5', '5/8', '½', '1 5/8', '1-5/8', '3 in', '2 cm', '5\'3"', '24 L'],
  ...['2 × 3', '12 ÷ 7', '2 x 5/8'],
);
const between = fc.constantFrom(' + ', ' − ', ' - ', '+', '–', '; ', ';');

/** Terms with signs or separators between them. */
const lists = fc
  .array(fc.tuple(number, between), { minLength: 1, maxLength: 4 })
  .map((terms) => terms.map(([term, sign], i) => (i > 0 ? sign : '') + term).join(''));

test('written out or not, it is the same length', () => {
  fc.assert(
    fc.property(lists, (typed) => {
      const before = readLengths(typed, 'in');
      if (!before.ok) return;
      expect(readLengths(withUnits(typed, 'in'), 'mm'), typed).toEqual(before);
    }),
    { numRuns: 500 },
  );
});

test('of any text at all, what can’t be read is left as typed, but for what is too long', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (typed) => {
      const before = readLengths(typed, 'in');
      const written = withUnits(typed, 'in');
      if (before.ok) expect(readLengths(written, 'in')).toEqual(before);
      else if (before.fault.kind !== 'too-long') expect(written).toBe(typed);
    }),
  );
});
