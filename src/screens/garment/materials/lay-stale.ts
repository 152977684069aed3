import { layStaleWords as words } from '#words/garment/garment-lay-stale-words.ts';
import type { LayNow } from '../../../garment/materials/lay-now.ts';
import { readHome } from '../../../garment/record/home.ts';
import { workName } from '../said/names.ts';
import type { Telling } from '../said/told-words.ts';
import { amountText } from './materials-text.ts';

/** Why a lay that was found doesn't hold any more. */
export function laySaid({ answer, bench }: Telling, { found, stale }: LayNow): string {
  if (!found || !stale) return '';
  const names = stale.pieces.map((home) => {
    const { id, side } = readHome(home);
    return workName({ answer }, id, side);
  });
  return words.stale(
    [...new Set(names)],
    stale.cloth || (stale.held && names.length === 0),
    amountText('laid', found.length, bench),
  );
}
