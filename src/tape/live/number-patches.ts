import type { Field } from '../picture/field.ts';
import type { Point } from '../picture/place.ts';
import { placeOn, pointOn, type ReadScale, type ScaleGeometry } from '../scales/scale.ts';
import { PATCH_MM, PATCH_SHARE, PATCH_STEPS, WIDEST_STEP } from './limits.ts';

/** Where the print of a number stands on its scale, and half of how far it reaches, in graduations. */
export interface Print {
  readonly tick: number;
  readonly across: number;
  readonly half: number;
}

export function printsOf({ geometry, numbers, mmPerTick }: ReadScale): Print[] {
  const places = numbers.map(({ x, y }) => placeOn(geometry, { x, y }));
  const step = leastStep(places.map(({ tick }) => tick));
  const half = Math.min(PATCH_SHARE * step, PATCH_MM / mmPerTick);
  return places.map(({ tick, across }) => ({ tick, across, half }));
}

function leastStep(ticks: readonly number[]): number {
  const sorted = [...ticks].sort((one, other) => one - other);
  const steps = sorted.slice(1).map((tick, i) => tick - (sorted[i] as number));
  return Math.min(...steps.filter((step) => step > 0.5), WIDEST_STEP);
}

/** The places of a number's patch, row after row, on a scale that has moved or hasn't. */
export function patch(geometry: ScaleGeometry, { tick, across, half }: Print): Point[] {
  const points: Point[] = [];
  for (let j = -PATCH_STEPS; j <= PATCH_STEPS; j++) {
    for (let i = -PATCH_STEPS; i <= PATCH_STEPS; i++) {
      points.push(
        pointOn(geometry, tick + (half * i) / PATCH_STEPS, across + (half * j) / PATCH_STEPS),
      );
    }
  }
  return points;
}

/** Whether a place can be looked at. */
export function inside({ width, height }: Field<'picture'>, { x, y }: Point): boolean {
  return x >= 1 && y >= 1 && x < width - 2 && y < height - 2;
}
