import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type GlassStretch,
  graduationsOn,
  OVERLAP,
  onGlass,
  placesOn,
  stretchesOf,
} from '../../src/drawing/glass.ts';
import { toMm } from '../../src/lengths/length.ts';
import { placesBetween } from '../lengths/arbitrary.ts';

/** Marks of a run in tenths of a mm, now and then one before zero. */
const places = fc
  .uniqueArray(fc.integer({ min: -200, max: 30_000 }), { maxLength: 60 })
  .map((tenths) => tenths.map((one) => one / 10).sort((a, b) => a - b));
const runs = fc.record({
  marks: places,
  length: fc.integer({ min: 1, max: 3000 }),
  room: fc.integer({ min: 40, max: 200 }),
  /** 1 mm and half; 1/8, 1/16 and 1/32 in. */
  graduation: fc.constantFrom(1, 0.5, 3.175, 1.5875, 0.79375),
});

const cut = ({ marks, length, room, graduation }: Run) =>
  stretchesOf(marks, length, room, graduation);
type Run = { marks: number[]; length: number; room: number; graduation: number };

/** The fewest stretches there can be, by going as far as possible with each. */
function fewest({ marks, length, room, graduation }: Run): number {
  const end = Math.max(length, marks.at(-1) ?? 0);
  let from = Math.min(0, marks[0] ?? 0);
  let count = 1;
  while (from + room < end - 1e-6) {
    const to = from + room;
    const overlap = Math.floor((to - OVERLAP) / graduation + 1e-6) * graduation;
    from = Math.max(overlap, ...marks.filter((mark) => mark <= to));
    count++;
  }
  return count;
}

test('stretches cover the run; each begins at a place drawn on the one before; none could be spared', () => {
  fc.assert(
    fc.property(runs, (run) => {
      const { marks, length, room, graduation } = run;
      const stretches = cut(run);
      expect(stretches[0]?.from).toBe(Math.min(0, marks[0] ?? 0));
      expect(stretches.at(-1)!.to).toBeGreaterThanOrEqual(length - 1e-6);
      expect(stretches.length).toBe(fewest(run));
      for (const [i, { from, to, next }] of stretches.entries()) {
        expect(to - from).toBeCloseTo(room, 9);
        expect(next).toBe(stretches[i + 1]?.from);
        if (next === undefined) continue;
        expect(next).toBeGreaterThan(from);
        expect(next).toBeLessThanOrEqual(to);
        if (marks.includes(next)) continue;
        expect(to - next).toBeGreaterThanOrEqual(OVERLAP - 1e-5);
        expect(next / graduation).toBeCloseTo(Math.round(next / graduation), 9);
      }
    }),
  );
});

test('every mark is drawn, and what a stretch begins with is drawn on the one before too', () => {
  fc.assert(
    fc.property(runs, (run) => {
      const drawn = new Set<number>();
      let before: readonly number[] = [];
      for (const stretch of cut(run)) {
        const shown = placesOn(stretch, run.marks, run.length);
        const at = shown.map(({ mm }) => mm);
        expect(at).toEqual([...at].sort((a, b) => a - b));
        expect(at[0]).toBeCloseTo(stretch.from, 9);
        if (before.length > 0) {
          expect(before.some((mm) => Math.abs(mm - stretch.from) < 1e-6)).toBe(true);
        }
        for (const { mark } of shown) if (mark !== undefined) drawn.add(mark);
        before = at;
      }
      expect(drawn.size).toBe(run.marks.length);
    }),
  );
});

test('a run that fits is one stretch; one that doesn’t goes on from a mark, or from an overlap mark', () => {
  const from = (stretches: GlassStretch[]) => stretches.map((one) => one.from);
  expect(stretchesOf([10, 20], 90, 100, 1)).toEqual([{ from: 0, to: 100, next: undefined }]);
  expect(from(stretchesOf([10, 60, 95, 130], 150, 100, 1))).toEqual([0, 95]);
  // The mark at 60 serves: two stretches reach 150 from there.
  expect(from(stretchesOf([10, 60, 130], 150, 100, 1))).toEqual([0, 60]);
  // From the mark at 10 they would not.
  expect(from(stretchesOf([10, 130], 150, 100.4, 1))).toEqual([0, 90]);
  expect(() => stretchesOf([], 100, 30, 1)).toThrow(RangeError);
});

test('a stretch shows zero, end and overlaps; where a mark lies, it stands for them', () => {
  const [first, second] = stretchesOf([0, 20], 150, 100, 1) as [GlassStretch, GlassStretch];
  expect(placesOn(first, [0, 20], 150)).toEqual([
    { mm: 0, kind: 'mark', mark: 0 },
    { mm: 20, kind: 'mark', mark: 1 },
    { mm: 90, kind: 'overlap' },
  ]);
  expect(placesOn(second, [0, 20], 150)).toEqual([
    { mm: 90, kind: 'overlap' },
    { mm: 150, kind: 'end' },
  ]);
});

test('a run of a kilometre is cut without a stretch too few', () => {
  expect(stretchesOf([], 1_000_000, 100, 1)).toHaveLength(Math.ceil((1_000_000 - 100) / 90) + 1);
});

test('every place is drawn on a whole device pixel, within half of one, from where the stretch begins', () => {
  fc.assert(
    fc.property(
      placesBetween(0, 200).map(toMm),
      fc.double({ min: 3, max: 20, noNaN: true }),
      fc.constantFrom(1, 1.5, 2, 2.625, 3),
      (mm, pxPerMm, devicePixelRatio) => {
        const device = onGlass(500 + mm, 500, { pxPerMm, devicePixelRatio }) * devicePixelRatio;
        expect(Math.abs(device - Math.round(device))).toBeLessThan(1e-6);
        expect(Math.abs(device - mm * pxPerMm * devicePixelRatio)).toBeLessThanOrEqual(0.5 + 1e-6);
      },
    ),
  );
});

test('graduations are those of the tape, from zero on, every few where they would be crowded', () => {
  const stretch = { from: 95, to: 98, next: undefined };
  expect(graduationsOn(stretch, 1, 0.5)).toEqual([95, 96, 97, 98]);
  expect(graduationsOn(stretch, 0.5, 0.6)).toEqual([95, 96, 97, 98]);
  expect(graduationsOn({ ...stretch, from: -5, to: 2 }, 1, 0.5)).toEqual([0, 1, 2]);
  // 1/16 in: 25.4 mm / 16.
  expect(graduationsOn({ ...stretch, from: 25.4, to: 28 }, 1.5875, 0.5)).toEqual([
    25.4,
    expect.closeTo(26.9875, 9),
  ]);
});
