import { textWidth } from './helvetica.ts';
import { line } from './paper-shapes.ts';
import { workPieces } from './sheet-drawing.ts';
import { columnOf } from './sheet-flow.ts';
import type { Piece, SheetBlock, SheetSetting, SheetTick, SheetWords } from './sheet-job.ts';
import { materialPieces, pairPieces } from './sheet-pairs.ts';
import { stripPieces } from './sheet-strip.ts';
import {
  BOX,
  boxShapes,
  highOf,
  LETTERING,
  type Lettering,
  lettered,
  linesOf,
  RULE,
} from './sheet-text.ts';

/** Under what stands together, in mm. */
const AFTER = 1;
/** Over a heading. */
const ABOVE = 1.6;
/** The number of a step begins after its box, what is done after that. */
const NUMBER = { at: BOX + 3, wide: 38 };
const WHAT = NUMBER.at + NUMBER.wide + 2;
/** Between two boxes beside each other. */
const APART = 2;
/** So many lines of boxes aren't parted. */
const FEW = 5;
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
      return pairPieces(block.pairs, columnOf(across));
    case 'materials':
      return materialPieces(block.materials, columnOf(across));
    case 'step':
      return stepPieces(block, across, setting, words);
    case 'works':
      return workPieces(block.works, across, words);
  }
}

function headingPiece(said: string, across: number): Piece {
  const kind = LETTERING.heading;
  const lines = linesOf(said, kind, across);
  const high = ABOVE + highOf(lines.length, kind) + AFTER;
  return {
    high,
    keep: true,
    shapesAt: ({ x, y }) => lettered(lines, { x, y: y + ABOVE }, kind),
  };
}

function paragraph(said: string, across: number, kind: Lettering): Piece {
  const lines = linesOf(said, kind, across);
  return {
    high: lines.length * kind.line + AFTER / 2,
    shapesAt: (at) => lettered(lines, at, kind),
  };
}

type Step = Extract<SheetBlock, { kind: 'step' }>;

/** A step with its box and number, what is to be minded, and of a row its strip and its marks. */
function stepPieces(step: Step, across: number, setting: SheetSetting, words: SheetWords): Piece[] {
  const room = across - INSET;
  const ticks = tickPieces(step.ticks ?? [], room);
  const strips = step.strip ? stripPieces(step.strip, room, setting, words) : [];
  // The last strip and the first of its numbers are read together; of a short row, all of them.
  const first = strips.length - 1;
  const last = first + (ticks.length <= FEW ? ticks.length : 1);
  const rows = [...strips, ...ticks].map(
    (piece, i): Piece => ({
      ...piece,
      ...(i >= first && i < last && { keep: i === first ? true : 'rather' }),
      shapesAt: ({ x, y }) => piece.shapesAt({ x: x + INSET, y }),
    }),
  );
  const head = stepHead(step, across);
  return [rows.length > 0 ? { ...head, keep: true } : head, ...rows];
}

function stepHead({ made, number, what, under: notes }: Step, across: number): Piece {
  const room = across - WHAT;
  const numbers = linesOf(number, LETTERING.number, NUMBER.wide);
  const said = linesOf(what, LETTERING.what, room);
  // Under a number of one line there is room for what is minded.
  const left = numbers.length > 1 ? WHAT : INSET;
  const minded = notes.flatMap((one) => linesOf(one, LETTERING.plain, across - left));
  const down = Math.max(said.length * LETTERING.what.line, LETTERING.number.line);
  const under = minded.length === 0 ? 0 : down + highOf(minded.length, LETTERING.plain);
  const beside = [highOf(numbers.length, LETTERING.number), highOf(said.length, LETTERING.what)];
  const high = 1 + Math.max(...beside, under, BOX) + AFTER;
  return {
    high,
    shapesAt: ({ x, y }) => [
      line({ x, y }, { x: x + across, y }, RULE),
      ...boxShapes({ x, y: y + 0.8 }, made),
      ...lettered(numbers, { x: x + NUMBER.at, y: y + 1 }, LETTERING.number),
      ...lettered(said, { x: x + WHAT, y: y + 1 }, LETTERING.what),
      ...lettered(minded, { x: x + left, y: y + 1 + down }, LETTERING.plain),
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
  const number = BOX + 1.5 + label + 1.6;
  const most = across - number;
  const texts = ticks.map(({ text }) => linesOf(text, LETTERING.mark, most, 1));
  const wide = number + Math.min(most, widest(texts.flat(), LETTERING.mark)) + APART;
  const columns = Math.max(1, Math.floor((across + APART) / wide));
  const cells = ticks.map((tick, i) => ({ ...tick, lines: texts[i] ?? [] }));
  return inRows(cells, columns).map(
    (row): Piece => ({
      high: BOX + 1.5,
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
