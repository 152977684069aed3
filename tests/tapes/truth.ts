import type { Camera } from './camera.ts';
import type { Hider } from './hider.ts';
import type { Random } from './random.ts';
import { fromLowEdge } from './scale-print.ts';
import { mmOf, type ScaleSpec } from './scale-spec.ts';
import type { TruePoint, TrueScale } from './scene-types.ts';
import type { TapeBody } from './tape-body.ts';

type Place = { readonly x: number; readonly y: number };
type Is = (place: Place) => boolean;

export interface Truth {
  readonly scales: TrueScale[];
  readonly points: TruePoint[];
}

/** Places asked about stand this far inside the picture. */
export const EDGE_PX = 4;
/** A place this near to something lying over the tape is not asked about. */
export const HIDDEN_MM = 1.2;
const ON_SCALE = 14;
/** Most of a stretch may be hidden. */
const MOST_TRIES = 40;

/** What is true of the scales of the tapes seen; units other than cm, mm and inch are left out. */
export function truthOf(
  bodies: readonly TapeBody[],
  camera: Camera,
  hiders: readonly Hider[],
  random: Random,
): Truth {
  const truth: Truth = { scales: [], points: [] };
  const count = bodies.reduce((sum, { spec }) => sum + spec.scales.length, 0);
  const on = (body: TapeBody, place: Place) => covers(body, camera.meet(place.x, place.y));
  const under = (place: Place) => {
    const [x, y] = camera.meet(place.x, place.y);
    return hiders.some(({ away }) => away(x, y) < HIDDEN_MM);
  };
  bodies.forEach((body, i) => {
    const hidden: Is = (place) => under(place) || bodies.slice(i + 1).some((one) => on(one, place));
    const elsewhere: Is = (place) => bodies.some((one) => one !== body && on(one, place));
    for (const scale of body.spec.scales) {
      const seen = trueScale(body, scale, camera);
      if (!seen) continue;
      truth.scales.push(seen);
      const each = Math.max(5, Math.ceil(ON_SCALE / count));
      const off = pointsOff(body, scale, camera, seen).filter((place) => !elsewhere(place));
      truth.points.push(...pointsOn(seen, hidden, random, each), ...off);
    }
  });
  return truth;
}

/** Whether a tape lies over a place of the bench, or within the room left around it. */
function covers({ spec, placeAt }: TapeBody, [x, y]: readonly [number, number]): boolean {
  const [s, across] = placeAt(x, y);
  const inside = Math.min(s - spec.from, spec.to - s, across, spec.width - across);
  return inside > -HIDDEN_MM;
}

function trueScale(body: TapeBody, scale: ScaleSpec, camera: Camera): TrueScale | undefined {
  const { spec } = body;
  const { unit } = scale;
  if (unit === 'foot') return undefined;
  const across = fromLowEdge(scale, scale.inset + (scale.lines.at(-1)?.mm ?? 0) / 2, spec.width);
  const along = (mm: number) => scale.zero + scale.direction * mm;
  const pointAt = (mm: number) => body.see(along(mm), across);
  const shown = (mm: number) => {
    const s = along(mm);
    const capped = spec.caps?.some(({ from, to }) => s > from - 0.3 && s < to + 0.3);
    return s >= spec.from && s <= spec.to && !capped && within(camera, pointAt(mm), EDGE_PX);
  };
  const [from, to] = longestRun(scale.first * mmOf[unit], scale.last * mmOf[unit], shown);
  if (!(to > from)) return undefined;
  const { id, subdivisions, numberEvery } = scale;
  return { id, unit, subdivisions, numberEvery, pointAt, visibleFromMm: from, visibleToMm: to };
}

export function within({ spec }: Camera, { x, y }: Place, margin: number): boolean {
  return x > margin && y > margin && x < spec.width - margin && y < spec.height - margin;
}

function longestRun(first: number, last: number, shown: (mm: number) => boolean): [number, number] {
  let best: [number, number] = [0, 0];
  let from: number | undefined;
  for (let mm = first; mm <= last + 1e-9; mm += 0.5) {
    if (!shown(mm)) from = undefined;
    else {
      from ??= mm;
      if (mm - from > best[1] - best[0]) best = [from, mm];
    }
  }
  return best;
}

/** Half of them on graduations, half anywhere. */
function pointsOn(scale: TrueScale, hidden: Is, random: Random, count: number): TruePoint[] {
  const { visibleFromMm: from, visibleToMm: to } = scale;
  const step = mmOf[scale.unit] / scale.subdivisions;
  const points: TruePoint[] = [];
  for (let attempt = 0; attempt < MOST_TRIES * count && points.length < count; attempt++) {
    // One in each part of the stretch, or chance would leave long parts of it untried.
    const anywhere = from + ((attempt + random.unit()) % count) * ((to - from) / count);
    const mm = attempt % 2 === 0 ? Math.round(anywhere / step) * step : anywhere;
    const place = scale.pointAt(mm);
    if (mm < from || mm > to || hidden(place)) continue;
    points.push({ ...place, mm, scale: scale.id, onScale: true });
  }
  return points;
}

/** Below zero, past the last line, and on the ground beside the tape. */
function pointsOff(body: TapeBody, scale: ScaleSpec, camera: Camera, seen: TrueScale): TruePoint[] {
  const [first, last] = [scale.first * mmOf[scale.unit], scale.last * mmOf[scale.unit]];
  const middle = (seen.visibleFromMm + seen.visibleToMm) / 2;
  const beside = fromLowEdge(scale, -9, body.spec.width);
  const places = [
    { mm: first - 4.3, ...seen.pointAt(first - 4.3) },
    { mm: last + 4.3, ...seen.pointAt(last + 4.3) },
    { mm: middle, ...body.see(scale.zero + scale.direction * middle, beside) },
  ];
  return places
    .filter((place) => within(camera, place, EDGE_PX))
    .map((place) => ({ ...place, scale: scale.id, onScale: false }));
}
