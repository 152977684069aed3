import { bowSlope, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { type Field, logOf } from '../picture/field.ts';
import { alongAt } from '../pitch/along.ts';
import { type BendPlace, walkBend } from '../pitch/bend-walk.ts';
import { bentRow } from '../pitch/bent-row.ts';
import type { Aim } from '../pitch/local-lines.ts';
import type { Refined } from '../pitch/refine.ts';
import { BEND_GROWS, SAME_BEND } from './limits.ts';

/** Follows rows round the bends of their tape, each bend once: many straight rows touch the same one. */
export function bendFollower(work: Field<'measuring'>) {
  const known: (readonly BendPlace[])[] = [];
  /** The row as far as its tape goes on, where that is much farther than it was followed straight on. */
  return (row: FollowedRow): Refined | undefined => {
    const aim = aimAt(row);
    if (known.some((bend) => bend.some((place) => isNear(place, aim)))) return undefined;
    const bend = walkBend(logOf(work), aim);
    const [first, last] = [bend[0], bend[bend.length - 1]];
    if (!first || !last) return undefined;
    const [from, to] = row.range;
    if (last.tick - first.tick < BEND_GROWS * (to - from)) return undefined;
    known.push(bend);
    return bentRow(work, bend);
  };
}

/** The middle of a row's lines and of its length. */
function aimAt({ frame, pitch, range: [from, to], pattern }: FollowedRow): Aim {
  const tick = (from + to) / 2;
  const u = alongAt(pitch, tick);
  const px = Math.abs(alongAt(pitch, tick + 0.5) - alongAt(pitch, tick - 0.5));
  const slope = bowSlope(frame, u);
  return {
    at: toImage(frame, u, pattern.zoneMiddle * px),
    angle: Math.atan2(frame.along[1], frame.along[0]) + Math.atan(slope),
    lean: frame.shear + frame.shearRate * u + slope,
    pitch: px,
  };
}

function isNear(place: BendPlace, { at, pitch }: Aim): boolean {
  const away = Math.hypot(place.at[0] - at[0], place.at[1] - at[1]);
  return away < SAME_BEND * pitch;
}
