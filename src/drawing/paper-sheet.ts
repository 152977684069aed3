import type { Point } from './figure.ts';
import { PAPER, type PaperSetting, type PaperShape, type PaperWords } from './paper-job.ts';
import { line, text } from './paper-shapes.ts';

/** Room for what stands over and under the work on a page, in mm. */
const HEAD = 12;
const FOOT = 16;
/** The bars a print is checked by, in mm. */
const BARS = [50, 50.8] as const;
const BETWEEN_BARS = 30;
const TITLE = 4;
const HOW = 3;
const WEIGHT = 0.2;
/** The row of pages that shows which one this is, in mm. */
const MAP = { width: 40, height: 3 };
/** More than this would lie nearer to each other than 1 mm. */
const MOST_IN_MAP = 40;
/** Capitals are at most as wide as high, on average; in heights. */
const LETTER = 0.95;

/** What every page has: whose it is, how to print it, its place among the pages, the bars. */
export interface Sheet {
  title: string;
  page: number;
  pages: number;
}

/** What is left of a page for the work, in mm. */
export function roomOn({ size, margin }: PaperSetting) {
  const { width, height } = PAPER[size];
  return {
    left: margin,
    top: margin + HEAD,
    across: width - 2 * margin,
    down: height - 2 * margin - HEAD - FOOT,
  };
}

export function sheetShapes(
  { title, page, pages }: Sheet,
  { size, margin }: PaperSetting,
  words: PaperWords,
): PaperShape[] {
  const { width, height } = PAPER[size];
  const right = width - margin - MAP.width;
  const top = margin + TITLE;
  return [
    text({ x: margin, y: top }, shortened(title, right - margin), TITLE),
    text({ x: margin, y: top + HOW + 2 }, words.actualSize, HOW),
    text({ x: right, y: top }, words.pageOf(page, pages), TITLE),
    ...mapShapes({ x: right, y: top + 2 }, page, pages),
    ...barShapes({ x: margin, y: height - margin - 4 }, words),
  ];
}

/** A name that is too long for its place ends in dots. */
function shortened(name: string, width: number): string {
  const most = Math.floor(width / (TITLE * LETTER));
  const letters = [...name];
  return letters.length <= most ? name : `${letters.slice(0, most - 1).join('')}…`;
}

/** The pages as a row, this one crossed; of many, the row is a plain bar and the cross is seen. */
function mapShapes({ x, y }: Point, page: number, pages: number): PaperShape[] {
  const each = MAP.width / pages;
  const crossed = Math.max(each, MAP.width / MOST_IN_MAP);
  const left = Math.min(x + (page - 1) * each, x + MAP.width - crossed);
  const [right, bottom] = [left + crossed, y + MAP.height];
  const uprights =
    pages > MOST_IN_MAP ? [0, pages] : Array.from({ length: pages + 1 }, (_, i) => i);
  return [
    rule({ x, y }, { x: x + MAP.width, y }),
    rule({ x, y: bottom }, { x: x + MAP.width, y: bottom }),
    ...uprights.map((i) => rule({ x: x + i * each, y }, { x: x + i * each, y: bottom })),
    rule({ x: left, y }, { x: right, y: bottom }),
    rule({ x: left, y: bottom }, { x: right, y }),
  ];
}

/** A bar of 50 mm and one of 2 in, side by side. */
export function barShapes({ x: left, y }: Point, { bars }: Pick<PaperWords, 'bars'>): PaperShape[] {
  return BARS.flatMap((long, i): PaperShape[] => {
    const x = left + i * (BARS[0] + BETWEEN_BARS);
    const tick = (at: number) => rule({ x: at, y: y - 3 }, { x: at, y: y + 3 });
    return [
      rule({ x, y }, { x: x + long, y }),
      tick(x),
      tick(x + long),
      text({ x, y: y - 4 }, bars[i] ?? '', HOW),
    ];
  });
}

function rule(from: Point, to: Point): PaperShape {
  return line(from, to, WEIGHT);
}
