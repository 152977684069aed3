import { textWidth } from './helvetica.ts';
import {
  PAPER,
  type PaperOutcome,
  type PaperPage,
  type PaperSetting,
  type PaperShape,
} from './paper-job.ts';
import { columnOf, onPages } from './sheet-flow.ts';
import type { Piece } from './sheet-job.ts';
import { LETTERING, lettered, linesOf } from './sheet-text.ts';

/** More pages than this are carried by nobody. */
const MOST_PAGES = 200;
/** The largest margin that leaves room for what is written. */
const WIDEST_MARGIN = 30;
/** Under the head of a page. */
const UNDER = 2;

/** What stands at the head of the first page, its title alone on those after it. */
interface Headed {
  title: string;
  under: readonly string[];
}

/** What a page has at its foot; none where it is 0 high. */
interface Foot {
  high: number;
  shapesAt(corner: { x: number; y: number }): PaperShape[];
}

/** How wide there is room on an upright page, in mm; undefined where the margins leave too little. */
export function acrossPage({ size, margin }: PaperSetting): number | undefined {
  const fits = margin >= 0 && margin <= WIDEST_MARGIN;
  return fits ? PAPER[size].height - 2 * margin : undefined;
}

/** How high the first page has room under its head, in mm. */
export function highOnFirst(headed: Headed, { size, margin }: PaperSetting): number {
  const across = PAPER[size].height - 2 * margin;
  return PAPER[size].width - 2 * margin - firstHead(headed, across).high;
}

/** Pieces on upright pages, as many as it takes, under the title and with which page each is. */
export function uprightPages(
  headed: Headed,
  pieces: readonly Piece[],
  { size, margin }: PaperSetting,
  { foot, pageOf }: { foot: Foot; pageOf: (page: number, pages: number) => string },
): PaperOutcome {
  const across = acrossPage({ size, margin });
  if (across === undefined) {
    return { ok: false, problem: { kind: 'no-room', most: WIDEST_MARGIN } };
  }
  const { width: height, height: width } = PAPER[size];
  const heads = [firstHead(headed, across), laterHead(headed, across)] as const;
  const room = height - 2 * margin - foot.high;
  const sheets = onPages(pieces, (page) => room - (page === 0 ? heads[0] : heads[1]).high);
  if (sheets.length > MOST_PAGES) {
    return { ok: false, problem: { kind: 'too-many', pages: sheets.length, most: MOST_PAGES } };
  }
  const pages = sheets.map((all, i): PaperPage => {
    const head = i === 0 ? heads[0] : heads[1];
    const shapes = [
      ...head.shapesAt({ x: margin, y: margin }),
      ...placeShapes(pageOf(i + 1, sheets.length), width - margin, margin),
      ...(foot.high > 0 ? foot.shapesAt({ x: margin, y: height - margin }) : []),
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

function firstHead({ title, under }: Headed, across: number): Piece {
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

function laterHead({ title }: Headed, across: number): Piece {
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
