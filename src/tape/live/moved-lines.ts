import type { RowFrame } from '../frame/frame.ts';
import { bandSignal, smoothed, strip } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import { placeIn, scaledAlong, scalingOf } from '../picture/space.ts';
import { type PhasePoint, phaseTrack } from '../pitch/phase.ts';
import { densityAt, distanceAt, type PositionModel } from '../pitch/position.ts';
import { enlargedModel, type ScaleGeometry } from '../scales/scale.ts';
import { bentTo } from '../scales/scale-of.ts';
import { FEWEST_LINES, LEAST_QUALITY, MOST_SHIFT, SMOOTHING, WIDE_PX, WINDOW } from './limits.ts';
import type { Motion } from './motion.ts';

/** A row of lines after the hand's motion, as well as that was measured. */
export function moved(
  geometry: ScaleGeometry,
  { cosine, sine, right, down }: Motion,
): ScaleGeometry {
  const size = scalingOf<'picture', 'picture'>(Math.hypot(cosine, sine));
  const turned = ([x, y]: readonly [number, number]) =>
    [(cosine * x - sine * y) / size, (sine * x + cosine * y) / size] as const;
  const { frame } = geometry;
  const [x, y] = frame.origin;
  const next: RowFrame<'picture'> = {
    origin: placeIn<'picture'>(cosine * x - sine * y + right, sine * x + cosine * y + down),
    along: turned(frame.along),
    across: turned(frame.across),
    shear: frame.shear,
    shearRate: frame.shearRate / size,
    bow2: frame.bow2 / size,
    bow3: frame.bow3 / (size * size),
    bowFrom: frame.bowFrom * size,
  };
  const model = enlargedModel(geometry.model, size);
  return { ...geometry, frame: next, model, centre: scaledAlong(geometry.centre, size) };
}

/** The lines' own phase puts right what the motion left; undefined when they aren't there. */
export function settled(
  field: Field<'picture'>,
  geometry: ScaleGeometry,
): ScaleGeometry | undefined {
  const { frame, centre, zoneFrom, zoneTo, ink } = geometry;
  let model: PositionModel<'picture'> = geometry.model;
  const middle = distanceAt(model, (geometry.from + geometry.to) / 2);
  const pitch = 1 / Math.abs(densityAt(model, middle));
  const low = Math.floor(zoneFrom * pitch);
  const high = Math.max(low + 2, Math.ceil(zoneTo * pitch));
  const along = strip(logOf(field), frame, Math.max(Math.abs(low), Math.abs(high)) + 1);
  if (along.width < FEWEST_LINES * pitch) return undefined;
  const plain = bandSignal(along, low, high).map((value) => value * ink);
  const signal = pitch > WIDE_PX ? smoothed(plain, pitch / SMOOTHING) : plain;
  for (let pass = 0; pass < 2; pass++) {
    const track = phaseTrack(signal, along.from, centre, model, WINDOW).filter(({ t }) =>
      isSeen(geometry, model, t),
    );
    const good = track.filter(({ quality }) => quality > LEAST_QUALITY);
    if (good.length < FEWEST_LINES || good.length < 0.5 * track.length) return undefined;
    if (pass === 0 && typicalShift(good) > MOST_SHIFT) return undefined;
    model = bentTo(model, good);
  }
  return { ...geometry, model };
}

function isSeen(geometry: ScaleGeometry, model: PositionModel<'picture'>, t: number): boolean {
  const low = distanceAt(model, geometry.from);
  const high = distanceAt(model, geometry.to);
  return t > Math.min(low, high) && t < Math.max(low, high);
}

function typicalShift(track: readonly PhasePoint[]): number {
  const sizes = track.map(({ phase }) => Math.abs(phase)).sort((a, b) => a - b);
  return sizes[sizes.length >> 1] ?? 1;
}
