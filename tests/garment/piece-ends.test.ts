import { expect, test } from 'vitest';
import {
  type FoundLay,
  idOfLaid,
  isSamePlace,
  keepsHeld,
} from '../../src/garment/record/cloth-lay.ts';
import {
  endsOf,
  leastArea,
  leastLong,
  type PieceForm,
} from '../../src/garment/record/piece-said.ts';

const four = (more: Partial<Extract<PieceForm, { kind: 'four' }>> = {}): PieceForm => ({
  ...{ kind: 'four', long: 60, top: 20, bottom: 30, slant: 'both' },
  ...more,
});

test('the ends of four sides lie as they are typed: both slant alike about the middle, or the right one alone', () => {
  expect(endsOf(four())).toEqual([
    [0, 5],
    [60, 0],
    [60, 30],
    [0, 25],
  ]);
  expect(endsOf(four({ top: 30, bottom: 20 }))).toEqual([
    [0, 0],
    [60, 5],
    [60, 25],
    [0, 30],
  ]);
  expect(endsOf(four({ slant: 'right' }))).toEqual([
    [0, 0],
    [60, 0],
    [60, 30],
    [0, 20],
  ]);
});

test('no less cloth than the area between the ends, less what is bowed in, and no less long than they lie apart', () => {
  // A trapezium: the mean of its two widths by its length.
  expect(leastArea(four())).toBe(60 * 25);
  expect(leastArea(four({ slant: 'right' }))).toBe(60 * 25);
  // The bottom is 30 wide and bows in by 2; what bows out takes more, not less.
  expect(leastArea(four({ bows: [0, -2, 0, 0] }))).toBe(60 * 25 - 60);
  expect(leastArea(four({ bows: [0, 2, 0, 0] }))).toBe(60 * 25);
  expect(leastArea(four({ bows: [0, -1000, 0, 0] }))).toBe(0);
  // Its left side runs from 0 | 5 to 60 | 0.
  const left = Math.hypot(60, 5);
  expect(leastArea(four({ bows: [-1] }))).toBeCloseTo(60 * 25 - left, 6);
  const corners: PieceForm = {
    kind: 'points',
    points: [
      [10, 10],
      [50, 10],
      [50, 40],
    ],
  };
  expect(leastArea(corners)).toBe((40 * 30) / 2);
  expect(leastLong(corners)).toBe(40);
  expect(leastLong(four())).toBe(60);
  // The other way round it is as large.
  expect(leastArea({ ...corners, points: [...corners.points].reverse() })).toBe(600);
});

test('a laid piece is of its need, be it the mirror image or not', () => {
  expect(idOfLaid({ id: 'w1|front~' })).toBe('w1|front');
  expect(idOfLaid({ id: 'w~1|front' })).toBe('w~1|front');
});

test('a place is kept by the same piece, turned alike, within a hundredth of a millimetre', () => {
  const one = { id: 'a', turn: 0, x: 1000, y: 2000 };
  expect(isSamePlace(one, { ...one, x: 1048, y: 2064 })).toBe(true);
  expect(isSamePlace(one, { ...one, x: 1048, y: 2065 })).toBe(false);
  expect(isSamePlace(one, { ...one, id: 'b' })).toBe(false);
  expect(isSamePlace(one, { ...one, turn: 180 })).toBe(false);
  const other = { ...one, x: 90_000 };
  const lay = (...laid: FoundLay['laid']) => ({ laid }) as FoundLay;
  expect(keepsHeld(lay(one, other), [other, one])).toBe(true);
  expect(keepsHeld(lay(other, one), [one])).toBe(true);
  expect(keepsHeld(lay(one), [one, other])).toBe(false);
  // Two that lie on each other need two.
  expect(keepsHeld(lay(one, other), [one, one])).toBe(false);
  expect(keepsHeld(lay(one, one), [one, one])).toBe(true);
  expect(keepsHeld(lay(), [])).toBe(true);
});
