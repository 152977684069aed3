import type { Claim } from '../claims/claim.ts';
import type { LinesSeen } from '../graduations/detected-lines.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import { BEGIN_ANEW, LINES_BELOW } from './limits.ts';

/**
 * Whether the lines go on a number or more below what would be the scale's nought, and all its
 * numbers are ones that some tapes print anew after every ten, or every foot: which ten, or foot,
 * they belong to isn't said by them.
 */
export function begunAnew(claim: Claim, { first, there }: LinesSeen): boolean {
  const { unit, agreeing, anchorTick, anchorValue, direction, mmPerTick, ticksPerNumber } = claim;
  const from = BEGIN_ANEW[unit];
  if (claim.foretold || from === undefined || agreeing.some(({ value }) => value >= from))
    return false;
  const nought = Math.round(anchorTick - (direction * anchorValue * mmPerUnit[unit]) / mmPerTick);
  let seen = 0;
  for (let below = 1; below <= ticksPerNumber; below++) {
    if (there[nought - direction * below - first]) seen++;
  }
  return seen >= LINES_BELOW * ticksPerNumber;
}
