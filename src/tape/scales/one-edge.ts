import { mmPerUnit } from '../graduations/tape-unit.ts';
import { FORETOLD_MM, SAME_LINES_MM } from './limits.ts';
import { placeOn, pointOn, type ReadScale, valueAtTick } from './scale.ts';

/**
 * Whether two scales are parts of one printed edge with something lying between them, so that
 * what is read on the one and on the other may be subtracted.
 */
export function isOneEdge(one: ReadScale, other: ReadScale): boolean {
  if (one === other) return true;
  if (one.unit !== other.unit) return false;
  const { from, to, zoneFrom, zoneTo } = other.geometry;
  const middle = (from + to) / 2;
  const at = pointOn(other.geometry, middle, (zoneFrom + zoneTo) / 2);
  const place = placeOn(one.geometry, at);
  const mm = mmPerUnit[one.unit];
  const differs = Math.abs(valueAtTick(one, place.tick) - valueAtTick(other, middle)) * mm;
  const apart = (place.away / Math.abs(place.pitch)) * one.mmPerTick;
  return apart < SAME_LINES_MM && differs < FORETOLD_MM;
}
