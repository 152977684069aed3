import { textWidth } from './helvetica.ts';
import { PAPER, type PaperOutcome, type PaperShape } from './paper-job.ts';
import { barShapes } from './paper-sheet.ts';
import { columnOf, onPages } from './sheet-flow.ts';
import type { Piece, SheetJob, SheetSetting, SheetWords } from './sheet-job.ts';
import { piecesOf } from './sheet-pieces.ts';
import { LETTERING, lettered, linesOf } from './sheet-text.ts';

/** More pages than this are carried by nobody. */
const MOST_PAGES = 200;
/** Room for the bars a print is checked by, and for what is said of them; in mm. */
const FOOT = 20;
/** The largest margin that leaves room for what is written. */
const WIDEST_MARGIN = 30;
/** Under the head of a page. */
const UNDER = 2;

/**
 * Lays the sheet of a garment out on upright pages: as many as it takes, nothing on each other and
 * nothing smaller than 9 pt, what is at true size with bars to check the print by.
 */
export function sheetPages(job: SheetJob, setting: SheetSetting, words: SheetWords): PaperOutcome {
  const { size, margin } = setting;
  if (!(margin >= 0 && margin <= WIDEST_MARGIN)) {
    return { ok: false, problem: { kind: 'no-room', most: WIDEST_MARGIN } };
  }
  const { width: height, height: width } = PAPER[size];
  const across = width - 2 * margin;
  const pieces = job.blocks.flatMap((block) => piecesOf(block, across, setting, words));
  const foot = pieces.some(({ trueSize }) => trueSize) ? FOOT : 0;
  const heads = [firstHead(job, across), laterHead(job, across)] as const;
  const room = height - 2 * margin - foot;
  const sheets = onPages(pieces, (page) => room - (page === 0 ? heads[0] : heads[1]).high);
  if (sheets.length > MOST_PAGES) {
    return { ok: false, problem: { kind: 'too-many', pages: sheets.length, most: MOST_PAGES } };
  }
  const pages = sheets.map((all, i) => {
    const head = i === 0 ? heads[0] : heads[1];
    const shapes = [
      ...head.shapesAt({ x: margin, y: margin }),
      ...placeShapes(words.pageOf(i + 1, sheets.length), width - margin, margin),
      ...(foot > 0 ? footShapes({ x: margin, y: height - margin }, across, words) : []),
    ];
    const right = across - columnOf(across);
    for (const { piece, column, down } of all) {
      const x = margin + column * right;
      shapes.push(...piece.shapesAt({ x, y: margin + head.high + down }));
    }
    return { width, height, shapes };
  });
  return { ok: true, pages };
}

/** Room at the right for which page it is. */
const PLACE = 26;

function firstHead({ title, under }: SheetJob, across: number): Piece {
  const lines = linesOf(title, LETTERING.title, across - PLACE, 3);
  const more = under.flatMap((one) => linesOf(one, LETTERING.what, across));
  const titled = lines.length * LETTERING.title.line;
  return {
    high: titled + more.length * LETTERING.what.line + UNDER,
    shapesAt: ({ x, y }) => [
      ...lettered(lines, { x, y }, LETTERING.title),
      ...lettered(more, { x, y: y + titled }, LETTERING.what),
    ],
  };
}

function laterHead({ title }: SheetJob, across: number): Piece {
  const lines = linesOf(title, LETTERING.plain, across - PLACE, 1);
  return {
    high: LETTERING.plain.line + UNDER,
    shapesAt: (at) => lettered(lines, at, LETTERING.plain),
  };
}

function placeShapes(said: string, right: number, y: number): PaperShape[] {
  const { plain } = LETTERING;
  return lettered([said], { x: right - textWidth(said, plain.size), y }, plain);
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
