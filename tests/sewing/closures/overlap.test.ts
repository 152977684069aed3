import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, toInches, ZERO } from '../../../src/lengths/length.ts';
import { overlapPastCentre } from '../../../src/sewing/closures/overlap.ts';
import { answer, problems, typed } from './closures-cases.ts';

const leastFor = (diameter: number) =>
  answer(overlapPastCentre(inches(diameter))).rules.map(({ least }) => toInches(least));

// ASDP standards, p. 24: at least D/2 + 1/4 in. Sewing reference book, trantor.is, ch0708: at
// least 3/4 D. dresspatternmaking.com: at least D, or 1 1/2 D for buttons of about 3/8 in.
// All three are trade or teaching pages, and they conflict.
test('5.12: a 3/4 in button: 5/8, 9/16 and 3/4 in', () => {
  expect(leastFor(3 / 4)).toEqual([5 / 8, 9 / 16, 3 / 4]);
  const { from, to } = answer(overlapPastCentre(inches(3 / 4)));
  expect([toInches(from), toInches(to)]).toEqual([9 / 16, 3 / 4]);
});

test('a button of about 3/8 in has the rule for small ones too', () => {
  expect(leastFor(3 / 8)).toEqual([7 / 16, 9 / 32, 3 / 8, 9 / 16]);
  expect(leastFor(1 / 2)).toHaveLength(3);
  // Taken as about 3/8: a sixteenth either way, and no more. Ours.
  expect([5, 7].map((of) => leastFor(of / 16).length)).toEqual([4, 4]);
  expect([4.9, 7.1].map((of) => leastFor(of / 16).length)).toEqual([3, 3]);
});

// Derived here: the first two rules agree at 1 in, the first and third at 1/2 in.
test('the rules cross at 1 in and at 1/2 in', () => {
  const [half, threeQuarters] = leastFor(1);
  expect(half).toBe(threeQuarters);
  const [first, , third] = leastFor(1 / 2);
  expect(first).toBe(third);
});

test('a wider button never needs less', () => {
  fc.assert(
    fc.property(typed(12, 60), typed(1, 20), (diameter, more) => {
      const small = answer(overlapPastCentre(diameter));
      const large = answer(overlapPastCentre((diameter + more) as typeof diameter));
      expect(large.from).toBeGreaterThan(small.from);
      expect(large.to).toBeGreaterThan(small.to);
    }),
  );
});

test('a button of no size is a problem', () => {
  expect(problems(overlapPastCentre(ZERO))[0]).toMatchObject({ field: 'diameter' });
});
