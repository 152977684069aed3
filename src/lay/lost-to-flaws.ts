import { outlineOf } from './check-lay.ts';
import { boxOf } from './outline.ts';
import type { Lay, LayTask } from './task.ts';

/** Less of the cloth than this, in mm, lies bare before the first piece of any lay. */
const BARE = 100;

/** How much of the cloth, from its cut end on, flaws leave no room on, in mm; 0 where it is little. */
export function lostToFlaws({ flaws = [], pieces, repeat }: LayTask, { laid }: Lay): number {
  if (flaws.length === 0) return 0;
  const begins = laid.flatMap((one) => {
    const piece = pieces.find(({ id }) => id === one.id);
    return piece ? [boxOf(outlineOf(piece, one)).x0] : [];
  });
  const bare = Math.min(...begins);
  return Number.isFinite(bare) && bare > Math.max(BARE, repeat?.along ?? 0) ? bare : 0;
}
