import { textWidth } from './helvetica.ts';
import { line } from './paper-shapes.ts';
import { columnOf } from './sheet-flow.ts';
import type { Piece, SheetBlock, SheetSetting, SheetTick, SheetWords } from './sheet-job.ts';
import { spanOf, stripPieces } from './sheet-strip.ts';
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
/** The number of a step begins after its box, what is done after that. */
const NUMBER = { at: BOX + 3, wide: 38, least: 22 };
/** Between a number and what is done. */
const BETWEEN = 2;
/** Between two boxes beside each other. */
const APART = 2;
/** So many lines of boxes aren't parted. */
const FEW = 5;
/** What stands under a step is set in by this. */
const INSET = NUMBER.at;
/** A row of more marks isn't kept together in a column. */
const MOST_IN_COLUMN = 24;

type Step = Extract<SheetBlock, { kind: 'step' }>;

/** What there is room for: how wide, in mm; `dense`: steps in two columns, where they can be. */
export interface SheetRoom extends SheetSetting {
  across: number;
  dense: boolean;
}

/** A step with its box and number, what is to be minded, and of a row its strip and its marks. */
export function stepPieces(step: Step, room: SheetRoom, words: SheetWords): Piece[] {
  const column = { ...room, across: columnOf(room.across) };
  if (!room.dense || !fitsColumn(step, room, column)) return partsOf(step, room, words);
  return [{ ...together(partsOf(step, column, words)), narrow: true }];
}

/** Whether a column holds a step: no row of many marks, and none that is at true size only over the page. */
function fitsColumn({ strip, ticks = [] }: Step, page: SheetRoom, { across }: SheetRoom): boolean {
  if (!strip) return true;
  const span = spanOf(strip);
  const isScaled = page.long === 'scale' && span > page.across - INSET;
  return ticks.length <= MOST_IN_COLUMN && (isScaled || span <= across - INSET);
}

/** Parts under each other as one that isn't broken. */
function together(parts: readonly Piece[]): Piece {
  const trueSize = parts.some((part) => part.trueSize);
  return {
    high: parts.reduce((high, part) => high + part.high, 0),
    ...(trueSize && { trueSize }),
    shapesAt({ x, y }) {
      let down = y;
      return parts.flatMap((part) => {
        const shapes = part.shapesAt({ x, y: down });
        down += part.high;
        return shapes;
      });
    },
  };
}

function partsOf(step: Step, room: SheetRoom, words: SheetWords): Piece[] {
  const { across } = room;
  const within = across - INSET;
  const ticks = tickPieces(step.ticks ?? [], within);
  const strips = step.strip ? stripPieces(step.strip, within, room, words) : [];
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
  const head = stepHead(step, room);
  return [rows.length > 0 ? { ...head, keep: true } : head, ...rows];
}

/** As wide as the number of a step is, so that in a column the more is left for what is done. */
function numberWide({ number }: Step): number {
  return Math.min(NUMBER.wide, Math.max(NUMBER.least, textWidth(number, LETTERING.number.size)));
}

function stepHead(step: Step, { across, dense }: SheetRoom): Piece {
  const { made, number, what, under: notes } = step;
  const wide = dense ? numberWide(step) : NUMBER.wide;
  const does = dense ? LETTERING.plain : LETTERING.what;
  const beside = NUMBER.at + wide + BETWEEN;
  const numbers = linesOf(number, LETTERING.number, wide);
  const said = linesOf(what, does, across - beside);
  // Under a number of one line there is room for what is minded.
  const left = numbers.length > 1 ? beside : INSET;
  const minded = notes.flatMap((one) => linesOf(one, LETTERING.plain, across - left));
  const down = Math.max(said.length * does.line, LETTERING.number.line);
  const under = minded.length === 0 ? 0 : down + highOf(minded.length, LETTERING.plain);
  const highs = [highOf(numbers.length, LETTERING.number), highOf(said.length, does)];
  return {
    high: 1 + Math.max(...highs, under, BOX) + (dense ? AFTER / 2 : AFTER),
    shapesAt: ({ x, y }) => [
      line({ x, y }, { x: x + across, y }, RULE),
      ...boxShapes({ x, y: y + 0.8 }, made),
      ...lettered(numbers, { x: x + NUMBER.at, y: y + 1 }, LETTERING.number),
      ...lettered(said, { x: x + beside, y: y + 1 }, does),
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
