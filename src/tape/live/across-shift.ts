import type { Field } from '../picture/field.ts';
import type { Point } from '../picture/place.ts';
import { pointOn, type ReadScale, type ScaleGeometry } from '../scales/scale.ts';
import { LEAST_ALIKE, MOST, TRIED } from './limits.ts';
import { likenessAt } from './motion.ts';
import { inside, patch, printsOf } from './number-patches.ts';

/**
 * How far a scale stands beside its print in the new frame, in px of it: the lines' phase puts
 * right what the motion left along the tape, and this does across it. Seen against the frame the
 * numbers were read in, so that small faults don't add up from frame to frame.
 */
export function acrossShift(
  keyField: Field<'picture'>,
  key: ReadScale,
  field: Field<'picture'>,
  moved: ScaleGeometry,
): Point {
  const prints = printsOf(key);
  const every = Math.max(1, Math.ceil(prints.length / MOST));
  const sums = TRIED.map(() => 0);
  let [count, right, down] = [0, 0, 0];
  for (const print of prints.filter((_, i) => i % every === 0)) {
    const here = patch(moved, print);
    const away = directionOf(moved, print);
    const tried = TRIED.map((px) =>
      here.map(({ x, y }) => ({ x: x + px * away.x, y: y + px * away.y })),
    );
    if (!tried.flat().every((point) => inside(field, point))) continue;
    const there = patch(key.geometry, print);
    for (const [i, places] of tried.entries()) {
      sums[i] = (sums[i] as number) + likenessAt(keyField, there, field, places);
    }
    count++;
    right += away.x;
    down += away.y;
  }
  const px = count > 0 ? topOf(sums.map((sum) => sum / count)) : 0;
  return { x: (px * right) / Math.max(1, count), y: (px * down) / Math.max(1, count) };
}

/** One px across the tape, away from its lines' row. */
function directionOf(
  geometry: ScaleGeometry,
  { tick, across }: { tick: number; across: number },
): Point {
  const [from, to] = [pointOn(geometry, tick, across), pointOn(geometry, tick, across + 1)];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** Where likeness is greatest, between the places tried; 0 when it is nowhere the print. */
function topOf(scores: readonly number[]): number {
  const best = scores.indexOf(Math.max(...scores));
  const [before, top, after] = [scores[best - 1], scores[best] as number, scores[best + 1]];
  const px = TRIED[best] as number;
  if (top < LEAST_ALIKE) return 0;
  if (before === undefined || after === undefined) return px;
  const bend = before - 2 * top + after;
  return bend < 0 ? px + (1.5 * 0.5 * (before - after)) / bend : px;
}
