import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, mm, toMm } from '../../../src/lengths/length.ts';
import type { StripInput } from '../../../src/sewing/edging/strip.ts';
import { widestOf } from '../../../src/sewing/edging/strip-followed.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';

const PLAIN: StripInput = {
  ...{ length: mm(200), width: mm(20), pitch: mm(8), margin: mm(5), hole: mm(2) },
  ...{ rows: 'one', fit: 'fill', middle: 'any', corners: [], angle: 90 },
};
const following = (places: readonly number[], set: Partial<StripInput> = {}) => {
  const follow = places.map((at) => exactLength(at * 8000));
  return stripHoles({ ...PLAIN, pitch: widestOf(follow, PLAIN.length), follow, ...set });
};
const solvedRows = (...given: Parameters<typeof following>) => {
  const found = following(...given);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.rows;
};
const inMm = (...given: Parameters<typeof following>) =>
  solvedRows(...given).map(({ runs }) =>
    runs.flatMap(({ marks }) => marks.map(({ at }) => Number(toMm(at).toFixed(4)))),
  );

// Common practice, no source: what is laced together has its holes opposite each other.
describe('holes that follow those of another strip', () => {
  test('they lie where those do, however uneven; a second row level with them, or midway', () => {
    expect(inMm([4, 12, 20.6, 28])).toEqual([[4, 12, 20.6, 28]]);
    expect(inMm([4, 12, 20.6], { rows: 'level' })).toEqual([
      [4, 12, 20.6],
      [4, 12, 20.6],
    ]);
    expect(inMm([4, 12, 20.6], { rows: 'staggered' })).toEqual([
      [4, 12, 20.6],
      [8, 16.3],
    ]);
    expect(inMm([4], { rows: 'staggered' })).toEqual([[4]]);
  });

  test('the least and the widest step are told, for the web that is left and the lace that is cut', () => {
    const [row] = solvedRows([4, 12, 20.6, 28]);
    expect(row?.pitches.map((pitch) => Number(toMm(pitch).toFixed(4)))).toEqual([7.4, 8.6]);
    expect(row?.ends).toEqual({ start: mm(4), end: mm(172) });
    expect(solvedRows([4, 12, 20])[0]?.pitches).toHaveLength(1);
  });

  test('what would break a cut end, or each other, lies twice or is too much is a problem of what it follows', () => {
    const problems = (places: readonly number[]) => {
      const found = following(places);
      return found.ok ? [] : found.problems.map(({ kind, field }) => [kind, field]);
    };
    expect(problems([])).toEqual([['too-few', 'follow']]);
    expect(problems([0.9, 20])).toEqual([['outside', 'follow']]);
    expect(problems([20, 199.5])).toEqual([['outside', 'follow']]);
    expect(problems([20, 20])).toEqual([['twice', 'follow']]);
    expect(problems([20, 21.9])).toEqual([['overlap', 'follow']]);
    expect(problems([20, 22.1])).toEqual([]);
    const width = following([20, 30], { margin: mm(0.5) });
    expect(width.ok ? [] : width.problems.map(({ field }) => field)).toEqual(['margin']);
  });

  test('law: a strip that follows another of its kind is that one, row by row, straight or bent', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 120, max: 2000 }),
        fc.integer({ min: 5, max: 20 }),
        fc.constantFrom('one', 'level'),
        fc.constantFrom('split', 'far-end', 'fill'),
        fc.option(fc.integer({ min: 400, max: 3000 }), { nil: undefined }),
        (long, pitch, rows, fit, bent) => {
          const radius = bent === undefined ? undefined : mm(bent);
          const strip: StripInput = {
            ...PLAIN,
            ...{ length: mm(long), pitch: mm(pitch), rows, fit, radius },
          };
          const first = stripHoles(strip);
          if (!first.ok) return;
          const follow = first.value.rows[0]?.runs[0]?.marks.map(({ at }) => at) ?? [];
          const same = stripHoles({ ...strip, pitch: widestOf(follow, strip.length), follow });
          if (!same.ok) throw new Error(JSON.stringify(same.problems));
          expect(same.value.count).toBe(first.value.count);
          for (const [i, row] of first.value.rows.entries()) {
            const other = same.value.rows[i];
            expect(other?.runs[0]?.length).toBe(row.runs[0]?.length);
            for (const [j, { at }] of (row.runs[0]?.marks ?? []).entries()) {
              expect(other?.runs[0]?.marks[j]?.at).toBeCloseTo(at, 3);
            }
          }
        },
      ),
      { seed: 1424, numRuns: 200 },
    );
  });
});
