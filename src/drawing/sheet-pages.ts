import type { PaperOutcome, PaperShape } from './paper-job.ts';
import { barShapes } from './paper-sheet.ts';
import type { SheetJob, SheetSetting, SheetWords } from './sheet-job.ts';
import { piecesOf } from './sheet-pieces.ts';
import type { SheetRoom } from './sheet-steps.ts';
import { LETTERING, lettered, linesOf } from './sheet-text.ts';
import { acrossPage, uprightPages } from './upright-pages.ts';

/** A sheet of no more pages is laid out at its ease. */
const FEW_PAGES = 2;
/** Room for the bars a print is checked by, and for what is said of them; in mm. */
const FOOT = 20;

/**
 * Lays the sheet of a garment out on upright pages: as many as it takes, nothing on each other and
 * nothing smaller than 9 pt, what is at true size with bars to check the print by. Where that is more than
 * two, steps stand in two columns if that takes fewer.
 */
export function sheetPages(job: SheetJob, setting: SheetSetting, words: SheetWords): PaperOutcome {
  const loose = laidOut(job, { ...setting, dense: false }, words);
  if (!loose.ok || loose.pages.length <= FEW_PAGES) return loose;
  const dense = laidOut(job, { ...setting, dense: true }, words);
  return dense.ok && dense.pages.length < loose.pages.length ? dense : loose;
}

function laidOut(job: SheetJob, room: Omit<SheetRoom, 'across'>, words: SheetWords): PaperOutcome {
  const across = acrossPage(room) ?? 0;
  const pieces =
    across > 0 ? job.blocks.flatMap((block) => piecesOf(block, { ...room, across }, words)) : [];
  const foot = {
    high: pieces.some(({ trueSize }) => trueSize) ? FOOT : 0,
    shapesAt: (at: { x: number; y: number }) => footShapes(at, across, words),
  };
  return uprightPages(job, pieces, room, { foot, pageOf: words.pageOf });
}

function footShapes(
  { x, y }: { x: number; y: number },
  across: number,
  words: SheetWords,
): PaperShape[] {
  const how = linesOf(words.actualSize, LETTERING.plain, across, 2);
  return [
    ...lettered(how, { x, y: y - FOOT + 2 }, LETTERING.plain),
    ...barShapes({ x, y: y - 4 }, words),
  ];
}
