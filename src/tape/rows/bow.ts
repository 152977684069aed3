import { directions, originAside, type RowFrame } from '../frame/frame.ts';
import { type Strip, strip } from '../frame/strip.ts';
import { leastSquares } from '../numerics/solve.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import {
  BORDER_PX,
  BOW_EDGE,
  BOW_FEWEST_PLACES,
  BOW_NEAR_PX,
  BOW_SHORTEST_ROW_PX,
  DOUBT_PX,
  LEAST_LEAN,
  LEAST_NEAR,
  LEAST_SAG_PX,
  MOST_SAG_PX,
  REACH_PX,
  ROUNDS,
  STRAIGHTENERS,
  STRETCH_PX,
  STRETCHES,
  WANDER_PX,
  WEIGHINGS,
} from './limits.ts';
import { type StrokePlace, strokeEnergy, strokePlace } from './stroke-places.ts';

/** v = a + b·t + c·t² + d·t³, t from −1 to 1 along the row: t = (u − middle) / half. */
interface Cubic {
  readonly terms: readonly [number, number, number, number];
  readonly middle: number;
  readonly half: number;
}

/**
 * The frame bent to its row of strokes, where the row clearly is not straight: square
 * and cubic term of the bow, with line and slant brought along.
 */
export function fitBow(small: Field<'search'>, frame: RowFrame<'search'>): RowFrame<'search'> {
  let bent = frame;
  for (let round = 0; round < ROUNDS; round++) {
    const band = strip(logOf(small), bent, REACH_PX);
    if (band.width < BOW_SHORTEST_ROW_PX) break;
    const places = followedPlaces(band);
    if (places.length < BOW_FEWEST_PLACES) break;
    const cubic = robustCubic(places, band.from + band.width / 2, band.width / 2);
    if (!cubic || !believable(cubic, places)) break;
    bent = withBow(bent, cubic);
  }
  return bent;
}

/** Where the strokes sit, followed from the middle of the row out to either end. */
function followedPlaces(band: Strip): StrokePlace[] {
  const energy = strokeEnergy(band, BOW_EDGE);
  const length = Math.max(STRETCH_PX, Math.round(band.width / STRETCHES));
  const middle = Math.floor(band.width / length / 2) * length;
  const most = band.reach - BORDER_PX;
  const places: StrokePlace[] = [];
  for (const step of [length >> 1, -(length >> 1)]) {
    let before = 0;
    for (let start = middle; start >= 0 && start + length <= band.width; start += step) {
      const lean = (v: number) => Math.max(LEAST_LEAN, 1 - Math.abs(v - before) / WANDER_PX);
      const place = strokePlace(band, energy, start, length, lean);
      if (!place) continue;
      places.push(place);
      before = Math.max(-most, Math.min(most, place.v));
    }
  }
  return places;
}

function robustCubic(places: readonly StrokePlace[], middle: number, half: number): Cubic | null {
  let weights = places.map(({ weight }) => weight);
  let cubic: Cubic | null = null;
  for (let round = 0; round < WEIGHINGS; round++) {
    const rows = places.map(({ u, v }, i) => {
      const t = (u - middle) / half;
      return [1, t, t * t, t * t * t, v, weights[i] as number];
    });
    const fit = leastSquares([...rows, ...STRAIGHTENERS], 4);
    if (!fit) return null;
    const [a = 0, b = 0, c = 0, d = 0] = fit;
    const next: Cubic = { terms: [a, b, c, d], middle, half };
    weights = places.map((place) => place.weight / (1 + (away(next, place) / DOUBT_PX) ** 2));
    cubic = next;
  }
  return cubic;
}

function away({ terms: [a, b, c, d], middle, half }: Cubic, { u, v }: StrokePlace): number {
  const t = (u - middle) / half;
  return v - a - b * t - c * t * t - d * t ** 3;
}

function believable(cubic: Cubic, places: readonly StrokePlace[]): boolean {
  const sag = Math.abs(cubic.terms[2]) + Math.abs(cubic.terms[3]);
  const near = places.filter((place) => Math.abs(away(cubic, place)) < BOW_NEAR_PX);
  return sag >= LEAST_SAG_PX && sag <= MOST_SAG_PX && near.length >= LEAST_NEAR * places.length;
}

function withBow(
  frame: RowFrame<'search'>,
  { terms: [a, b, c, d], middle, half }: Cubic,
): RowFrame<'search'> {
  const { along } = frame;
  const slope = b / half;
  const start = a - slope * middle;
  return {
    ...directions(Math.atan2(along[1], along[0]) + Math.atan(slope)),
    origin: originAside(frame, start),
    // The slant was taken from the strokes as they stand, so it already turns with the bow.
    shear: frame.shear + slope,
    shearRate: frame.shearRate,
    bow2: frame.bow2 + c / (half * half),
    bow3: frame.bow3 + d / half ** 3,
    bowFrom: middle,
  };
}
