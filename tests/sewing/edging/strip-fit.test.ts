import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ExactLength, exactLength, mm } from '../../../src/lengths/length.ts';
import { MOST_HOLES } from '../../../src/sewing/edging/strip.ts';
import { type FitInput, fitRow } from '../../../src/sewing/edging/strip-fit.ts';
import { solved } from '../outcomes.ts';

const PLAIN: FitInput = {
  length: mm(400),
  pitch: mm(8),
  end: mm(4),
  fit: 'split',
  middle: 'any',
  least: mm(3),
};
const rowOf = (set: Partial<FitInput>) => solved(fitRow({ ...PLAIN, ...set }));
const off = (length: ExactLength, by: number) => exactLength(length + by);

describe('keeping the pitch', () => {
  // A length divided by 97 and multiplied again is short of itself in the last place of a double.
  test('a whole number of pitches fits, whatever dividing leaves in the last place', () => {
    for (let n = 1; n < 400; n++) {
      const row = rowOf({ length: mm(108), pitch: exactLength(mm(100) / n) });
      expect(row.count, `${n} spaces`).toBe(n + 1);
      expect(row.first).toBeCloseTo(mm(4), 3);
    }
  });

  test('a unit short of a whole pitch is one space fewer, and what is left is at both ends', () => {
    expect(rowOf({ length: mm(24), end: mm(0) }).count).toBe(4);
    const short = rowOf({ length: off(mm(24), -1), end: mm(0) });
    expect(short).toEqual({ count: 3, pitch: mm(8), first: (mm(8) - 1) / 2 });
    expect(rowOf({ length: off(mm(24), -1), end: mm(0), fit: 'far-end' }).first).toBe(0);
  });

  test('ends that leave nothing between them leave one hole, a unit less is refused', () => {
    expect(rowOf({ length: mm(8) })).toEqual({ count: 1, pitch: mm(8), first: mm(4) });
    expect(fitRow({ ...PLAIN, length: off(mm(8), -1) })).toMatchObject({
      problems: [{ kind: 'ends-too-long', field: 'end', room: mm(8) - 1, needed: mm(8) }],
    });
  });

  // Of 3 spaces the middle is between two holes, of 2 it is a hole.
  test('the middle is on a hole or between two as asked, one space fewer where it has to be', () => {
    const three = { length: mm(24), end: mm(0) };
    expect(rowOf({ ...three, middle: 'between' }).count).toBe(4);
    expect(rowOf({ ...three, middle: 'hole' })).toMatchObject({ count: 3, first: mm(4) });
    expect(rowOf({ length: mm(16), end: mm(0), middle: 'hole' }).count).toBe(3);
    expect(rowOf({ length: mm(16), end: mm(0), middle: 'between' }).count).toBe(2);
    // From one end on the middle of the row is not that of the strip.
    expect(rowOf({ ...three, middle: 'hole', fit: 'far-end' }).count).toBe(4);
  });

  test('between two holes needs two: no room for them is said with what is needed', () => {
    expect(rowOf({ length: mm(15), middle: 'hole' }).count).toBe(1);
    expect(fitRow({ ...PLAIN, length: mm(15), middle: 'between' })).toMatchObject({
      problems: [{ kind: 'does-not-fit', field: 'length', room: mm(15), needed: mm(16) }],
    });
  });

  test('as many holes as are counted, and not one more', () => {
    const most = mm(8 * (MOST_HOLES - 1));
    expect(rowOf({ length: most, end: mm(0) }).count).toBe(MOST_HOLES);
    const more = exactLength(most + mm(8));
    expect(fitRow({ ...PLAIN, length: more, end: mm(0) })).toMatchObject({
      problems: [{ kind: 'too-close', field: 'pitch', least: more / (MOST_HOLES - 1) }],
    });
  });
});

describe('evening the pitch', () => {
  test('filling begins at its end, a loop at half a pitch', () => {
    expect(rowOf({ length: mm(28), fit: 'fill' })).toEqual({
      ...{ count: 4, pitch: exactLength(mm(20) / 3), first: mm(4) },
    });
    expect(rowOf({ length: mm(50), fit: 'loop', pitch: mm(10) })).toEqual({
      ...{ count: 5, pitch: mm(10), first: mm(5) },
    });
  });

  test('a loop has three holes at least', () => {
    const loop = { fit: 'loop', pitch: mm(10) } as const;
    expect(rowOf({ ...loop, length: mm(21) })).toMatchObject({ count: 3, pitch: mm(7) });
    expect(rowOf({ ...loop, length: mm(9) })).toMatchObject({ count: 3, pitch: mm(3) });
    expect(fitRow({ ...PLAIN, ...loop, length: off(mm(9), -1) })).toMatchObject({
      problems: [{ kind: 'does-not-fit', field: 'length', room: mm(9) - 1, needed: mm(9) }],
    });
    // An even number of holes: four at least.
    expect(fitRow({ ...PLAIN, ...loop, length: mm(11), middle: 'between' })).toMatchObject({
      problems: [{ kind: 'does-not-fit', needed: mm(12) }],
    });
  });

  test('no pitch is brought below the least, not by a unit', () => {
    const fill = { fit: 'fill', end: mm(0), pitch: mm(4), least: mm(4) } as const;
    // 23 / 6 would be nearer to 4 than 23 / 5.
    expect(rowOf({ ...fill, length: mm(23) }).count).toBe(6);
    expect(rowOf({ ...fill, length: mm(24) }).count).toBe(7);
    expect(fitRow({ ...PLAIN, ...fill, length: off(mm(4), -1) })).toMatchObject({
      problems: [{ kind: 'does-not-fit', needed: mm(4) }],
    });
    expect(rowOf({ ...fill, length: mm(4) })).toMatchObject({ count: 2, pitch: mm(4) });
  });

  // 6 spaces would be nearest and are even, 7 are under the least; 5 make 25/5.
  test('where one space more is too close, there is one fewer for the middle', () => {
    const fill = { fit: 'fill', end: mm(0), pitch: mm(4), least: mm(4) } as const;
    const row = rowOf({ ...fill, length: mm(25), middle: 'between' });
    expect(row).toMatchObject({ count: 6, pitch: mm(5) });
  });

  test('of all numbers of spaces that suit, the nearest pitch is taken', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 900 }),
        fc.integer({ min: 4, max: 40 }),
        fc.constantFrom('fill' as const, 'loop' as const),
        fc.constantFrom('any' as const, 'hole' as const, 'between' as const),
        (length, pitch, fit, middle) => {
          const outcome = fitRow({
            ...PLAIN,
            ...{ length: mm(length), end: mm(0), pitch: mm(pitch), fit, middle },
          });
          // What suits: an odd number of holes for a hole in the middle, an even one for a space.
          const all = Array.from({ length: 400 }, (_, i) => i + (fit === 'loop' ? 3 : 2))
            .filter((holes) => middle === 'any' || holes % 2 === (middle === 'hole' ? 1 : 0))
            .map((holes) => mm(length) / (fit === 'loop' ? holes : holes - 1))
            .filter((own) => own >= PLAIN.least);
          expect(outcome.ok).toBe(all.length > 0);
          if (!outcome.ok) return;
          const nearest = Math.min(...all.map((own) => Math.abs(own - mm(pitch))));
          expect(Math.abs(outcome.value.pitch - mm(pitch))).toBeCloseTo(nearest, 6);
        },
      ),
      { numRuns: 400, seed: 1232 },
    );
  });
});

describe('with the count decided', () => {
  // 78 holes punched of a strip that came out 63.0 long: 622 mm over 77 spaces, or (630 − 616) ÷ 2 = 7 mm at either end (by hand).
  test('holes that are begun keep their count: the pitch gives way, or the ends', () => {
    const begun = { length: mm(630), count: 78 };
    expect(rowOf({ ...begun, fit: 'fill' }).pitch).toBeCloseTo(mm(622) / 77, 3);
    expect(rowOf(begun)).toEqual({ count: 78, pitch: mm(8), first: mm(7) });
    expect(fitRow({ ...PLAIN, length: mm(623), count: 78 })).toMatchObject({
      problems: [{ kind: 'does-not-fit', field: 'length', needed: mm(624) }],
    });
  });

  test('deciding what it would be anyhow changes nothing; any other count is kept or refused', () => {
    const cases = fc.record({
      length: fc.integer({ min: 60, max: 900 }).map(mm),
      pitch: fc.integer({ min: 5, max: 20 }).map(mm),
      fit: fc.constantFrom('split' as const, 'far-end' as const, 'fill' as const, 'loop' as const),
    });
    fc.assert(
      fc.property(cases, fc.integer({ min: 3, max: 150 }), (set, count) => {
        const free = rowOf(set);
        expect(rowOf({ ...set, count: free.count })).toEqual(free);
        const kept = fitRow({ ...PLAIN, ...set, count });
        if (!kept.ok) return;
        const { first, pitch } = kept.value;
        expect(kept.value.count).toBe(count);
        expect(pitch).toBeGreaterThanOrEqual(mm(3) - 1);
        expect(first + (count - 1) * pitch).toBeLessThanOrEqual(set.length);
      }),
      { seed: 1313 },
    );
  });
});
