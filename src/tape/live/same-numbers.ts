import { toImage } from '../frame/frame.ts';
import type { Field } from '../picture/field.ts';
import type { Point } from '../picture/place.ts';
import { alongRow, centred } from '../picture/space.ts';
import { densityAt } from '../pitch/position.ts';
import type { ReadScale } from '../scales/scale.ts';
import {
  BARE_SHARE,
  DIGIT_STEPS,
  FEWEST_NUMBERS,
  MOST_SIZE,
  PATCH_STEPS,
  SAME_DIGIT,
  SAME_NUMBER,
  SAME_SHARE,
} from './limits.ts';
import { contrastAt, likenessAt } from './motion.ts';
import { inside, patch, printsOf } from './number-patches.ts';

/**
 * Whether the numbers seen when a scale was read are where they must be now, and not one number
 * off.
 */
export function showsItsNumbers(
  keyField: Field<'picture'>,
  key: ReadScale,
  field: Field<'picture'>,
  held: ReadScale,
): boolean {
  const grown = sizeOf(held) / sizeOf(key);
  if (!(grown < MOST_SIZE && grown > 1 / MOST_SIZE)) return false;
  let [seen, right] = [0, 0];
  for (const print of printsOf(key)) {
    const here = patch(held.geometry, print);
    if (!here.every((point) => inside(field, point))) continue;
    const there = patch(key.geometry, print);
    seen++;
    if (isSameNumber(keyField, there, field, here)) right++;
  }
  return seen >= FEWEST_NUMBERS && right >= Math.max(FEWEST_NUMBERS, SAME_SHARE * seen);
}

/** Px to a graduation in the middle of a scale. */
function sizeOf({ geometry: { frame, model, centre } }: ReadScale): number {
  const [x, y] = toImage(frame, centre, 0);
  const [nextX, nextY] = toImage(frame, alongRow(centre + 1 / densityAt(model, centred(0))), 0);
  return Math.hypot(nextX - x, nextY - y);
}

/**
 * Whether two patches show the same number: as wholes, and digit by digit along the tape and
 * across it, since one digit of three weighs too little in the whole.
 */
function isSameNumber(
  keyField: Field<'picture'>,
  there: readonly Point[],
  field: Field<'picture'>,
  here: readonly Point[],
): boolean {
  if (likenessAt(keyField, there, field, here) <= SAME_NUMBER) return false;
  return DIGIT_PLACES.every((places) => {
    const pick = (points: readonly Point[]) => places.map((place) => points[place] as Point);
    const shown = contrastAt(keyField, pick(there));
    // Bare tape beside a short number tells nothing.
    if (shown < BARE_SHARE * contrastAt(keyField, there)) return true;
    return likenessAt(keyField, pick(there), field, pick(here)) > SAME_DIGIT;
  });
}

const SIDE = 2 * PATCH_STEPS + 1;

/** Indices of a patch's points in windows one digit wide, across the tape and along it. */
const DIGIT_PLACES: readonly (readonly number[])[] = [0, 2, 4, 6, 8].flatMap((first) => {
  const inside = (step: number) => step >= first && step < first + DIGIT_STEPS;
  const all = Array.from({ length: SIDE * SIDE }, (_, index) => index);
  return [
    all.filter((index) => inside(index % SIDE)),
    all.filter((index) => inside(Math.floor(index / SIDE))),
  ];
});
