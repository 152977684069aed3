import { mmPerUnit } from '../graduations/tape-unit.ts';
import type { Point } from '../picture/place.ts';
import { tableAt } from '../pitch/position.ts';
import {
  CLEARLY_NEARER,
  LEAST_DOUBT_MM,
  NEARER_PX,
  PARALLEL,
  PAST_LINES,
  PAST_NUMBERS_MM,
  READ_AT_FARTHEST_MM,
  SAME_MM,
  ZERO_SLACK_TICKS,
} from './limits.ts';
import {
  placeOn,
  type ReadScale,
  type ScaleGeometry,
  type ScalePlace,
  valueAtTick,
} from './scale.ts';
import type { PointReading, PointReason, TapeReading } from './tape-reading.ts';

/**
 * Reads one place of the picture. The place belongs to the scale whose lines
 * are nearest; where that one can't be read, there is no reading, though another might give one.
 */
export function readingAt(reading: TapeReading, at: Point): PointReading {
  const near = reading.scales
    .map((scale, index) => ({ scale, index, place: placeOn(scale.geometry, at) }))
    .filter(({ scale, place }) => isBeside(scale, place))
    .sort((one, other) => one.place.away - other.place.away);
  const here = near.filter(({ scale, place }) => isAlong(scale, place));
  const [owner, ...rest] = here;
  if (!owner) return no(reading.scales.length === 0 ? 'nothing-read' : 'off-the-scale');
  // Past the last line seen of an edge, its lines go on: the other edge's numbers aren't theirs.
  const nearest = near[0];
  const between = nearest && owner.place.away - nearest.place.away > NEARER_PX;
  if (between && isParallel(nearest.scale, owner.scale)) return no('off-the-scale');
  // So do those of another tape, which comes out from under this one: off the lines it may be either.
  const isOther = ({ scale, place }: (typeof near)[number]) =>
    !isParallel(scale, owner.scale) &&
    Math.abs(mmOn(scale, place) - mmOn(owner.scale, owner.place)) > SAME_MM;
  const off = owner.place.away > NEARER_PX;
  if (off && near.some(isOther)) return no('another-scale');
  if (isCrowded(owner.scale.geometry, owner.place)) return no('another-scale');
  if (reading.unread?.some((row) => isNearer(row, owner.place, at))) return no('another-scale');
  const readout = readOn(owner.scale, owner.index, owner.place);
  for (const other of rest) {
    if (owner.place.away < CLEARLY_NEARER * other.place.away) continue;
    const second = readOn(other.scale, other.index, other.place);
    if (!readout.ok || !second.ok || Math.abs(readout.mm - second.mm) > SAME_MM) {
      return readout.ok || second.ok ? no('another-scale') : readout;
    }
  }
  return readout;
}

function isNearer(row: ScaleGeometry, owner: ScalePlace, at: Point): boolean {
  const place = placeOn(row, at);
  const inside = place.tick > row.from && place.tick < row.to;
  return inside && place.away < owner.away - NEARER_PX;
}

/** Whether strokes of something else stand here, or between here and the scale's lines. */
function isCrowded({ crowded = [] }: ScaleGeometry, place: ScalePlace): boolean {
  return crowded.some(
    ({ from, to, across, outwards }) =>
      place.tick > from && place.tick < to && outwards * (place.across - across) > 0,
  );
}

function isBeside(scale: ReadScale, place: ScalePlace): boolean {
  const { zoneFrom, zoneTo, numbersAcross } = scale.geometry;
  const far = READ_AT_FARTHEST_MM / scale.mmPerTick;
  const past = PAST_NUMBERS_MM / scale.mmPerTick;
  const low = Math.min(zoneFrom - far, numbersAcross - past);
  const high = Math.max(zoneTo + far, numbersAcross + past);
  return place.across >= low && place.across <= high;
}

function isAlong({ geometry }: ReadScale, { tick }: ScalePlace): boolean {
  return tick > geometry.from - PAST_LINES && tick < geometry.to + PAST_LINES;
}

function isParallel(one: ReadScale, other: ReadScale): boolean {
  const [x, y] = one.geometry.frame.along;
  const [otherX, otherY] = other.geometry.frame.along;
  return Math.abs(x * otherX + y * otherY) > PARALLEL;
}

function readOn(scale: ReadScale, index: number, place: ScalePlace): PointReading {
  if (!scale.sure) return { ok: false, reason: 'not-sure-yet', scale: index };
  const inside = scale.stretches.some(({ from, to }) => place.tick >= from && place.tick <= to);
  if (!inside) return no('beyond-the-numbers');
  const value = valueAtTick(scale, place.tick);
  const mm = mmOn(scale, place);
  if (mm < -ZERO_SLACK_TICKS * scale.mmPerTick) return no('below-zero');
  const uncertaintyMm = uncertaintyAt(scale, place);
  return { ok: true, scale: index, value, unit: scale.unit, mm, uncertaintyMm };
}

function mmOn(scale: ReadScale, { tick }: ScalePlace): number {
  return valueAtTick(scale, tick) * mmPerUnit[scale.unit];
}

function uncertaintyAt(scale: ReadScale, place: ScalePlace): number {
  const { scatter, slantDoubt, zoneFrom, zoneTo, spread } = scale.geometry;
  const across = Math.abs(place.across - (zoneFrom + zoneTo) / 2);
  const along = spread ? tableAt(spread, place.tick) : 0;
  const ticks = 2 * Math.hypot(scatter, slantDoubt * across, along);
  return Math.hypot(LEAST_DOUBT_MM, ticks * scale.mmPerTick);
}

function no(reason: PointReason): PointReading {
  return { ok: false, reason };
}
