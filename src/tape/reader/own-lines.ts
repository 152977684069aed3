import type { Claim } from '../claims/claim.ts';
import { originAside } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { ownLean } from '../graduations/own-lean.ts';
import type { Field } from '../picture/field.ts';
import { alongRow, centred } from '../picture/space.ts';
import { densityAt } from '../pitch/position.ts';
import type { Refined } from '../pitch/refine.ts';
import { INTO_OWN_LINES, MOST_ASIDE } from './limits.ts';

/**
 * A row whose lines, as they lean where its numbers stand, come out beside where its frame has
 * them: it runs between two lengths of tape, and its numbers would be given to other lines.
 * Given is where that tape's own lines run; undefined where the frame is right.
 */
export function ownLinesOf(
  work: Field<'measuring'>,
  row: FollowedRow,
  { across }: Pick<Claim, 'across'>,
): Refined | undefined {
  const { frame, pitch, pattern } = row;
  const side = across > pattern.zoneMiddle ? 1 : -1;
  const lean = ownLean(work, row, side);
  if (Math.abs(lean * (across - pattern.zoneMiddle)) < MOST_ASIDE) return undefined;
  const aside = (side * INTO_OWN_LINES) / densityAt(pitch.model, centred(0));
  const moved = { ...frame, shear: frame.shear + lean };
  const shift = aside * (frame.shear + frame.shearRate * pitch.centre);
  return {
    frame: { ...moved, origin: originAside(frame, aside) },
    pitch: { ...pitch, centre: alongRow(pitch.centre + shift) },
  };
}
