import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foldedRows, openRows, type Piece } from '../../../src/garment/materials/in-rows.ts';

const piece = (along: number, across: number, count = 1, fold = false): Piece => ({
  ...{ along, across, count, fold },
});

/** Pieces that fit on cloth of this width, in whole millimetres. */
const WIDTH = 140;
const pieces = fc.array(
  fc.record({
    along: fc.integer({ min: 1, max: 120 }),
    across: fc.integer({ min: 1, max: WIDTH }),
    count: fc.integer({ min: 1, max: 7 }),
    fold: fc.boolean(),
  }),
  { minLength: 1, maxLength: 9 },
);

interface Laid {
  x: number;
  y: number;
  across: number;
  along: number;
}

/** Folded, of pieces as long as one another what is on the fold may go first: the shorter is taken. */
function laid(all: readonly Piece[], width: number, folded: boolean) {
  const byWidth = laidSo(all, width, folded, false);
  if (!folded) return byWidth;
  const byFold = laidSo(all, width, folded, true);
  return byFold.end < byWidth.end ? byFold : byWidth;
}

/** Lays them one by one, and says where each comes to lie on the open cloth; the middle is 0. */
function laidSo(all: readonly Piece[], width: number, folded: boolean, foldFirst: boolean) {
  const half = width / 2;
  const opened = (one: Piece) => !folded || (!one.fold && one.across > half);
  const single = (one: Piece) => ({ ...one, count: 1 });
  const each = (one: Piece) => Array.from({ length: one.count }, () => single(one));
  const byFold = (one: Piece, other: Piece) => Number(other.fold) - Number(one.fold);
  const byLength = (one: Piece, other: Piece) =>
    other.along - one.along ||
    (foldFirst && byFold(one, other)) ||
    seen(other) - seen(one) ||
    byFold(one, other);
  const seen = (one: Piece) => (folded && one.fold ? one.across / 2 : one.across);
  const places: Laid[] = [];
  let end = 0;
  const row = { from: 0, x: 0 };
  const put = (one: Piece, room: number, anew: boolean) => {
    if (anew || row.x + seen(one) > room) {
      Object.assign(row, { from: end, x: 0 });
      end += one.along;
    }
    const x = row.x;
    row.x += seen(one);
    return { x, y: row.from, across: seen(one), along: one.along };
  };
  row.x = Number.POSITIVE_INFINITY;
  for (const one of all.filter(opened).flatMap(each).sort(byLength)) {
    const at = put(one, width, false);
    places.push({ ...at, x: at.x - half });
  }
  row.x = Number.POSITIVE_INFINITY;
  const twos = all
    .filter((one) => !opened(one))
    .flatMap((one) => (one.fold ? each(one) : each(one).slice(0, Math.ceil(one.count / 2))));
  for (const one of twos.sort(byLength)) {
    const at = put(one, half, one.fold);
    places.push(at, { ...at, x: -at.x - at.across });
  }
  return { end, places };
}

const overlap = (one: Laid, other: Laid) =>
  one.x < other.x + other.across &&
  other.x < one.x + one.across &&
  one.y < other.y + other.along &&
  other.y < one.y + one.along;

test.each([
  ['open', openRows, false],
  ['folded', foldedRows, true],
] as const)(
  '%s: laid one by one they take as much, lie on the cloth and on no other',
  (_, rows, folded) => {
    fc.assert(
      fc.property(pieces, (all) => {
        const { end, places } = laid(all, WIDTH, folded);
        expect(rows(all, WIDTH)).toBeCloseTo(end, 6);
        for (const [i, one] of places.entries()) {
          expect(Math.abs(one.x + one.across / 2) + one.across / 2).toBeLessThanOrEqual(WIDTH / 2);
          expect(one.y + one.along).toBeLessThanOrEqual(end);
          expect(places.slice(i + 1).filter((other) => overlap(one, other))).toEqual([]);
        }
      }),
      { seed: 1551, numRuns: 300 },
    );
  },
);

// The invariant that the published tables (7.1) and the area rule (7.5) both obey, and area itself.
test('7.5 more pieces never take less, wider cloth never more, and never less than their area', () => {
  fc.assert(
    fc.property(pieces, pieces, fc.integer({ min: 0, max: 90 }), (some, more, wider) => {
      for (const rows of [openRows, foldedRows]) {
        const alone = rows(some, WIDTH) ?? 0;
        expect(rows([...some, ...more], WIDTH)).toBeGreaterThanOrEqual(alone);
        const area = some.reduce((sum, one) => sum + one.count * one.along * one.across, 0);
        expect(alone * WIDTH).toBeGreaterThanOrEqual(area - 1e-6);
      }
      expect(openRows(some, WIDTH + wider)).toBeLessThanOrEqual(openRows(some, WIDTH) ?? 0);
    }),
    { seed: 1552, numRuns: 500 },
  );
});

test('two fronts beside a back, two sleeves beside a collar, worked by hand', () => {
  const shirt = [piece(70, 40, 2), piece(70, 50), piece(60, 35, 2), piece(10, 45, 2)];
  // 40 + 40 + 50 in the first row; 35 + 35 + 45 in the second; the other collar in the third.
  expect(openRows(shirt, 140)).toBe(70 + 60 + 10);
  // 50 + 40 + 40 + 35 + 35 in the first; both collars in the second.
  expect(openRows(shirt, 220)).toBe(70 + 10);
  expect(openRows([], 140)).toBe(0);
});

// 7.20: most layouts fold the cloth, so that what is usable is half its width: 44 in gives 22 in,
// and what is wider than that is cut open.
test('7.20 folded cloth of 44 in has 22 in: wider pieces are cut open, a half on the fold', () => {
  expect(foldedRows([piece(30, 22, 2)], 44)).toBe(30);
  expect(foldedRows([piece(30, 22.5, 2)], 44)).toBe(60);
  expect(foldedRows([piece(30, 40, 1, true)], 44)).toBe(30);
  // One that is left over wastes its twin; each on the fold has a row of its own, for there is one fold.
  expect(foldedRows([piece(30, 11, 3)], 44)).toBe(30);
  expect(foldedRows([piece(30, 11, 5)], 44)).toBe(60);
  expect(foldedRows([piece(30, 10, 2, true)], 44)).toBe(60);
});

test('a wider pair lies beside a back as long on the fold, and narrower ones beside a wider pair', () => {
  // 135 folded is 67.5: half the back, 19.65, and the front, 25.5, are 45.15.
  const [front, back] = [piece(59.7, 25.5, 2), piece(59.7, 39.3, 1, true)];
  expect(foldedRows([front, back], 135)).toBe(59.7);
  // Half a back of 50 leaves 17.5: 15 goes beside it, where the pair of 60 has its row before.
  const three = [piece(30, 60, 2), piece(30, 100, 1, true), piece(30, 15, 2)];
  expect(foldedRows(three, 135)).toBe(60);
});

test('a piece just half as wide as folded cloth is cut through both layers', () => {
  // Open they would lie side by side.
  expect(foldedRows([piece(30, 22), piece(20, 22)], 44)).toBe(30 + 20);
});

test('of two alike the one on the fold is laid first, so that the other has room beside it', () => {
  const [fold, other] = [piece(30, 40, 1, true), piece(30, 20, 1)];
  expect(foldedRows([fold, other], 88)).toBe(30);
  expect(foldedRows([other, fold], 88)).toBe(30);
});

test('a piece wider than the cloth can’t be laid on it', () => {
  expect(openRows([piece(10, 141)], 140)).toBeUndefined();
  expect(foldedRows([piece(10, 141, 1, true)], 140)).toBeUndefined();
  expect(openRows([piece(10, 140)], 140)).toBe(10);
});
