import { textWidth } from './helvetica.ts';
import type { Piece, SheetMaterial, SheetPairs } from './sheet-job.ts';
import { BOX, boxShapes, highOf, LETTERING, lettered, linesOf } from './sheet-text.ts';

/** Under a pair, and between a name and its number; in mm. */
const AFTER = 1.4;
const CLOSE = 0.4;
const BETWEEN = 3;
/** A number takes at most this part of its column; the name has the rest. */
const NUMBER = 0.45;
/** What is said of a material begins after its box. */
const INSET = BOX + 3;

/** Names with their numbers at the right, one under the other. @param wide in mm @param dense close together */
export function pairPieces(pairs: SheetPairs, wide: number, dense = false): Piece[] {
  const after = dense ? CLOSE : AFTER;
  const texts = pairs.map(([, number]) => linesOf(number, LETTERING.mark, NUMBER * wide));
  const widest = widestOf(texts);
  return pairs.map(([name], i): Piece => {
    const text = texts[i] ?? [];
    const what = linesOf(name, LETTERING.plain, wide - widest - BETWEEN);
    return {
      narrow: true,
      high:
        Math.max(highOf(what.length, LETTERING.plain), highOf(text.length, LETTERING.mark)) + after,
      shapesAt: ({ x, y }) => [
        ...lettered(what, { x, y }, LETTERING.plain),
        ...lettered(text, { x: x + wide - widest, y }, LETTERING.mark),
      ],
    };
  });
}

/** Materials with their boxes, how much of each, and what is to be minded. @param wide in mm */
export function materialPieces(materials: readonly SheetMaterial[], wide: number): Piece[] {
  const room = wide - INSET;
  const amounts = materials.map(({ amount }) => linesOf(amount, LETTERING.mark, NUMBER * room));
  const named = INSET + widestOf(amounts) + BETWEEN;
  return materials.map(({ there, name, notes }, i): Piece => {
    const amount = amounts[i] ?? [];
    const what = linesOf(name, LETTERING.what, wide - named);
    const minded = linesOf(notes.join(' '), LETTERING.small, room);
    const head = Math.max(amount.length, what.length) * LETTERING.mark.line;
    return {
      narrow: true,
      high: 0.5 + head + highOf(minded.length, LETTERING.small) + AFTER,
      shapesAt: ({ x, y }) => [
        ...boxShapes({ x, y }, there),
        ...lettered(amount, { x: x + INSET, y: y + 0.5 }, LETTERING.mark),
        ...lettered(what, { x: x + named, y: y + 0.5 }, LETTERING.what),
        ...lettered(minded, { x: x + INSET, y: y + 0.5 + head }, LETTERING.small),
      ],
    };
  });
}

function widestOf(texts: readonly (readonly string[])[]): number {
  return texts.flat().reduce((most, one) => Math.max(most, textWidth(one, LETTERING.mark.size)), 0);
}
