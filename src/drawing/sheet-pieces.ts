import { textWidth } from './helvetica.ts';
import { line } from './paper-shapes.ts';
import { drawingPieces } from './sheet-drawing.ts';
import type { Piece, SheetBlock, SheetSetting, SheetTick, SheetWords } from './sheet-job.ts';
import { stripPieces } from './sheet-strip.ts';
import {
  BOX,
  boxShapes,
  LETTERING,
  type Lettering,
  lettered,
  linesOf,
  RULE,
} from './sheet-text.ts';

/** Room between columns, and after what stands together; in mm. */
const GAP = 6;
const AFTER = 1.6;
/** The number of a step begins after its box, what is done after that. */
const NUMBER = { at: BOX + 3, wide: 38 };
const WHAT = NUMBER.at + NUMBER.wide + 2;
/** What stands under a step is set in by this. */
const INSET = NUMBER.at;

/** A block of the sheet in parts that aren't broken. @param across in mm */
export function piecesOf(
  block: SheetBlock,
  across: number,
  setting: SheetSetting,
  words: SheetWords,
): Piece[] {
  switch (block.kind) {
    case 'heading':
      return [headingPiece(block.text, across)];
    case 'note':
      return [paragraph(block.text, across, block.loud ? LETTERING.loud : LETTERING.plain)];
    case 'pairs':
      return pairPieces(block.pairs, across);
    case 'step':
      return stepPieces(block, across, setting, words);
    case 'drawings':
      return drawingPieces(block.drawings, across, words);
  }
}

function headingPiece(said: string, across: number): Piece {
  const kind = LETTERING.heading;
  const lines = linesOf(said, kind, across);
  const high = 2 + lines.length * kind.line;
  return {
    high,
    keep: true,
    shapesAt: ({ x, y }) => lettered(lines, { x, y: y + 2 }, kind),
  };
}

function paragraph(said: string, across: number, kind: Lettering): Piece {
  const lines = linesOf(said, kind, across);
  return {
    high: lines.length * kind.line + AFTER / 2,
    shapesAt: (at) => lettered(lines, at, kind),
  };
}

/** Names with their numbers, two beside each other. */
function pairPieces(
  pairs: readonly (readonly [name: string, number: string])[],
  across: number,
): Piece[] {
  const wide = (across - GAP) / 2;
  const [name, number] = [0.62 * wide, 0.38 * wide - 2];
  const cells = pairs.map(([what, text]) => ({
    what: linesOf(what, LETTERING.plain, name),
    text: linesOf(text, LETTERING.mark, number),
  }));
  return inRows(cells, 2).map((row): Piece => {
    const lines = Math.max(...row.flatMap(({ what, text }) => [what.length, text.length]));
    return {
      high: lines * LETTERING.mark.line + AFTER / 2,
      shapesAt: ({ x, y }) =>
        row.flatMap(({ what, text }, i) => {
          const left = x + i * (wide + GAP);
          return [
            ...lettered(what, { x: left, y }, LETTERING.plain),
            ...lettered(text, { x: left + name + 2, y }, LETTERING.mark),
          ];
        }),
    };
  });
}

type Step = Extract<SheetBlock, { kind: 'step' }>;

/** A step with its box and number, what is to be minded, and of a row its strip and its marks. */
function stepPieces(step: Step, across: number, setting: SheetSetting, words: SheetWords): Piece[] {
  const room = across - INSET;
  const rows = [
    ...(step.strip ? stripPieces(step.strip, room, setting, words) : []),
    ...tickPieces(step.ticks ?? [], room),
  ].map(
    (piece): Piece => ({
      ...piece,
      shapesAt: ({ x, y }) => piece.shapesAt({ x: x + INSET, y }),
    }),
  );
  const head = stepHead(step, across);
  return [rows.length > 0 ? { ...head, keep: true } : head, ...rows];
}

function stepHead({ made, number, what, under }: Step, across: number): Piece {
  const room = across - WHAT;
  const numbers = linesOf(number, LETTERING.number, NUMBER.wide);
  const said = linesOf(what, LETTERING.what, room);
  const minded = under.flatMap((one) => linesOf(one, LETTERING.plain, room));
  const text = said.length * LETTERING.what.line + minded.length * LETTERING.plain.line;
  const high = Math.max(numbers.length * LETTERING.number.line, text, BOX) + AFTER;
  return {
    high,
    shapesAt: ({ x, y }) => [
      line({ x, y }, { x: x + across, y }, RULE),
      ...boxShapes({ x, y: y + 0.8 }, made),
      ...lettered(numbers, { x: x + NUMBER.at, y: y + 1 }, LETTERING.number),
      ...lettered(said, { x: x + WHAT, y: y + 1 }, LETTERING.what),
      ...lettered(
        minded,
        { x: x + WHAT, y: y + 1 + said.length * LETTERING.what.line },
        LETTERING.plain,
      ),
    ],
  };
}

/** Marks to tick, as many beside each other as there is room for. */
function tickPieces(ticks: readonly SheetTick[], across: number): Piece[] {
  if (ticks.length === 0) return [];
  const widest = (texts: readonly string[], { size }: Lettering) =>
    texts.reduce((most, one) => Math.max(most, textWidth(one, size)), 0);
  const label = widest(
    ticks.map((one) => one.label),
    LETTERING.label,
  );
  const number = BOX + 1.5 + label + 2;
  const most = across - number;
  const texts = ticks.map(({ text }) => linesOf(text, LETTERING.mark, most, 1));
  const wide = number + Math.min(most, widest(texts.flat(), LETTERING.mark)) + 3;
  const columns = Math.max(1, Math.floor((across + 3) / wide));
  const cells = ticks.map((tick, i) => ({ ...tick, lines: texts[i] ?? [] }));
  return inRows(cells, columns).map(
    (row): Piece => ({
      high: BOX + 1.8,
      shapesAt: ({ x, y }) =>
        row.flatMap(({ label: own, made, lines }, i) => {
          const left = x + i * wide;
          const foot = { x: left + BOX + 1.5, y: y + 0.7 };
          return [
            ...boxShapes({ x: left, y }, made),
            ...lettered([own], foot, LETTERING.label),
            ...lettered(lines, { x: left + number, y: y + 0.5 }, LETTERING.mark),
          ];
        }),
    }),
  );
}

function inRows<One>(all: readonly One[], columns: number): One[][] {
  const rows: One[][] = [];
  for (let i = 0; i < all.length; i += columns) rows.push(all.slice(i, i + columns));
  return rows;
}
