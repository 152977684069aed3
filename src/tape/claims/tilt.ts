import { bowAt } from '../frame/frame.ts';
import type { Field } from '../picture/field.ts';
import { FOCAL, MOST_BENT, MOST_BOWED } from './limits.ts';
import type { DoubtedClaim } from './reconcile.ts';

/** The angle from square, from how much the lines of a straight row in no doubt converge; in degrees. */
export function tiltOf(
  claims: readonly DoubtedClaim[],
  { width, height }: Field,
): number | undefined {
  const row = claims.find(({ doubts }) => doubts.size === 0)?.row;
  if (!row) return undefined;
  const { frame, pitch } = row;
  const bends = pitch.model.residual?.values ?? [];
  const bows = [pitch.from, pitch.to].map((u) => Math.abs(bowAt(frame, u) * pitch.model.a));
  if (Math.max(0, ...bends) - Math.min(0, ...bends) > MOST_BENT) return undefined;
  if (Math.max(...bows) > MOST_BOWED) return undefined;
  const focal = FOCAL * Math.max(width, height);
  const along = Math.atan(Math.abs(pitch.model.c) * focal);
  const across = Math.atan(Math.abs(frame.shearRate) * focal);
  return Math.round((Math.hypot(along, across) * 180) / Math.PI);
}
