import { toFrame, toImage } from '../frame/frame.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import { alongAt, fromCentre, nextAlong } from '../pitch/along.ts';
import { densityAt, distanceAt, graduationAt } from '../pitch/position.ts';
import type { Claim } from './claim.ts';
import type { ClaimOfRow } from './claimed-row.ts';
import {
  COMPARED_AT,
  COMPARISONS_CONVERGING,
  COMPARISONS_END_TICKS,
  COMPARISONS_PARALLEL,
  ONE_TAPE_MM,
  PAST_ROW,
} from './limits.ts';

/** Two claims at one place: how their rows lie there, and what they say of it. */
export interface Comparison {
  readonly parallel: boolean;
  /** As far from parallel as the two edges of a wide rule look at a slant. */
  readonly converging: boolean;
  readonly sameWay: boolean;
  readonly apartTicks: number;
  readonly apartMm: number;
  /** Px to a millimetre on the one over px to a millimetre on the other. */
  readonly sizeRatio: number;
  readonly differsMm: number;
  /** The place lies where both rows were followed, not beyond the end of one. */
  readonly within: boolean;
}

/** Compares two claims at places of the second that lie beside the first. */
export function comparisons(one: ClaimOfRow, other: ClaimOfRow): Comparison[] {
  const [from, to] = other.row.range;
  return COMPARED_AT.flatMap((share) => {
    const found = beside(one, other, from + share * (to - from));
    return found && found.apartMm < ONE_TAPE_MM ? [found] : [];
  });
}

function beside(one: ClaimOfRow, other: ClaimOfRow, tick: number): Comparison | null {
  const { frame, pitch } = other.row;
  const t = distanceAt(pitch.model, tick);
  const here = alongAt(pitch, tick);
  const [u, v] = toFrame(one.row.frame, toImage(frame, here, 0));
  const [nextU, nextV] = toFrame(one.row.frame, toImage(frame, nextAlong(here), 0));
  const ownT = fromCentre(one.row.pitch, u);
  const ownTick = graduationAt(one.row.pitch.model, ownT);
  const [first, last] = one.row.range;
  const slack = PAST_ROW * (last - first);
  if (!(ownTick > first - slack && ownTick < last + slack)) return null;
  const density = densityAt(one.row.pitch.model, ownT);
  const apartTicks = Math.abs(v * density);
  const pxPerMm = 1 / (density * one.claim.mmPerTick);
  const otherPxPerMm = 1 / (densityAt(pitch.model, t) * other.claim.mmPerTick);
  const turn = Math.atan2(nextV - v, nextU - u);
  const along = Math.cos(turn) > 0 ? 1 : -1;
  return {
    parallel: Math.abs(Math.sin(turn)) < COMPARISONS_PARALLEL,
    converging: Math.abs(Math.sin(turn)) < COMPARISONS_CONVERGING,
    sameWay: one.claim.direction === other.claim.direction * along,
    apartTicks,
    apartMm: apartTicks * one.claim.mmPerTick,
    sizeRatio: pxPerMm / otherPxPerMm,
    within: ownTick > first - COMPARISONS_END_TICKS && ownTick < last + COMPARISONS_END_TICKS,
    differsMm: Math.abs(mmAt(one.claim, ownTick) - mmAt(other.claim, tick)),
  };
}

/** What a claim says of a graduation, in mm from its zero. */
export function mmAt(claim: Claim, tick: number): number {
  return (
    claim.anchorValue * mmPerUnit[claim.unit] +
    claim.direction * claim.mmPerTick * (tick - claim.anchorTick)
  );
}
