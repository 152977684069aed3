import { directions, originAside, type RowFrame } from '../frame/frame.ts';
import { type Strip, strip } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import { fitBow } from './bow.ts';
import {
  FEWEST_EDGES,
  MOST_SLANT,
  NO_SPREAD,
  OFF_MIDDLE,
  ROUND_REACHES_PX,
  ROW_FIT_EDGE,
  ROW_FIT_SHORTEST_ROW_PX,
  ROW_STRETCH_PX,
  ROW_STRETCHES,
  SLANT_REACH_PX,
} from './limits.ts';
import { type Line, robustLine } from './robust-line.ts';
import { type StrokePlace, strokeEnergy, strokePlace } from './stroke-places.ts';

/**
 * The frame of a row of strokes, from a straight frame near it: line and slant fitted
 * in a few rounds, then the bow.
 *
 * @param small the picture the row was found in.
 * @param frame straight, at most some 25 px and 3° out.
 * @returns null when there is no row of strokes there, or too short a piece.
 */
export function fitRow(
  small: Field<'search'>,
  frame: RowFrame<'search'>,
): RowFrame<'search'> | null {
  let fitted = frame;
  for (const reach of ROUND_REACHES_PX) {
    const band = strip(logOf(small), fitted, reach);
    if (band.width < ROW_FIT_SHORTEST_ROW_PX) return null;
    const slant = slantOf(band);
    const line = robustLine(rowPlaces(band));
    if (!slant || !line) return null;
    fitted = moved(fitted, line, slant);
  }
  return fitBow(small, fitted);
}

/** The frame turned and shifted to a line found in it, its strokes slanted further. */
function moved(frame: RowFrame<'search'>, line: Line, slant: Slant): RowFrame<'search'> {
  const { along } = frame;
  return {
    ...frame,
    ...directions(Math.atan2(along[1], along[0]) + Math.atan(line.slope)),
    origin: originAside(frame, line.start),
    shear: frame.shear + slant.shear + line.slope,
    shearRate: frame.shearRate + slant.rate,
  };
}

/** Where the strokes sit, in overlapping stretches along the row. */
function rowPlaces(band: Strip): StrokePlace[] {
  const energy = strokeEnergy(band, ROW_FIT_EDGE);
  const length = Math.max(ROW_STRETCH_PX, Math.round(band.width / ROW_STRETCHES));
  const lean = (v: number) => 1 - (OFF_MIDDLE * Math.abs(v)) / band.reach;
  const places: StrokePlace[] = [];
  for (let start = 0; start + length <= band.width; start += length >> 1) {
    const place = strokePlace(band, energy, start, length, lean);
    if (place) places.push(place);
  }
  return places;
}

interface Slant {
  readonly shear: number;
  readonly rate: number;
}

/**
 * How much the strokes slant, linear along the row: on a stroke the grey changes by
 * nothing in the direction (shear, 1), so gradU·(shear + rate·u) + gradV = 0; least
 * squares over all edges.
 */
function slantOf(band: Strip): Slant | null {
  const half = band.width / 2;
  const sums = slantSums(band);
  const determinant = sums.one * sums.square - sums.first ** 2;
  if (sums.edges < FEWEST_EDGES || !(determinant > NO_SPREAD)) return null;
  const middle = (sums.right * sums.square - sums.rightFirst * sums.first) / determinant;
  const rate = (sums.rightFirst * sums.one - sums.right * sums.first) / determinant / half;
  return { shear: middle - rate * (band.from + half), rate };
}

/** Sums of the normal equations; the place along the row runs from −1 to 1. */
function slantSums({ width, reach, values }: Strip) {
  const half = width / 2;
  const sums = { edges: 0, one: 0, first: 0, square: 0, right: 0, rightFirst: 0 };
  for (let j = reach - SLANT_REACH_PX + 1; j < reach + SLANT_REACH_PX; j++) {
    for (let i = 1; i < width - 1; i++) {
      const k = j * width + i;
      const along = (values[k + 1] as number) - (values[k - 1] as number);
      if (!(Math.abs(along) > ROW_FIT_EDGE.leastAlong)) continue;
      const across = (values[k + width] as number) - (values[k - width] as number);
      if (!(Math.abs(across) < MOST_SLANT * Math.abs(along))) continue;
      const place = (i - half) / half;
      sums.edges++;
      sums.one += along * along;
      sums.first += along * along * place;
      sums.square += along * along * place * place;
      sums.right -= along * across;
      sums.rightFirst -= along * across * place;
    }
  }
  return sums;
}
