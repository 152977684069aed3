import type { Point } from './figure.ts';
import { inLines, points, textWidth } from './helvetica.ts';
import type { PaperShape } from './paper-job.ts';
import { line } from './paper-shapes.ts';

/** Lettering of the sheet: the height of its capitals, and from one line to the next; in mm. */
export interface Lettering {
  size: number;
  line: number;
  bold?: true;
}

const lettering = (type: number, bold?: true): Lettering => ({
  size: points(type),
  line: points(type) * 1.65,
  ...(bold && { bold }),
});

/** Nothing is smaller than 9 pt, what the hand needs larger: to be read at arm's length. */
export const LETTERING = {
  title: lettering(20, true),
  heading: lettering(13, true),
  number: lettering(13, true),
  what: lettering(11),
  plain: lettering(10),
  loud: lettering(10.5, true),
  mark: lettering(11, true),
  label: lettering(9.5),
  small: lettering(9),
} as const;

/** A rule between what stands on the sheet, in mm. */
export const RULE = 0.1;
/** The side of a box to tick. */
export const BOX = 4;

/** Capitals with the tails of letters, as a part of the capitals. */
const TAILS = 1.35;

/** So many lines at the most: what is longer is read on the phone. */
const MOST_LINES = 12;

/** A text in its lines, the last of too many cut. @param wide in mm */
export function linesOf(text: string, { size }: Lettering, wide: number, most = MOST_LINES) {
  const lines = inLines(printable(text), size, wide);
  if (lines.length <= most) return lines;
  let last = lines[most - 1] ?? '';
  while (last !== '' && textWidth(`${last}…`, size) > wide) last = last.slice(0, -1);
  return [...lines.slice(0, most - 1), `${last.trimEnd()}…`];
}

/** Lines under each other, the first one's capitals at the top. */
export function lettered(
  lines: readonly string[],
  { x, y }: Point,
  { size, line: down, bold }: Lettering,
): PaperShape[] {
  return lines.map((text, i) => ({
    ...{ kind: 'text', at: { x, y: y + size + i * down }, text, size },
    ...(bold && { bold }),
  }));
}

/** How high so many lines of it are: to under the tails of the last, in mm. */
export function highOf(lines: number, { size, line: down }: Lettering): number {
  return lines === 0 ? 0 : (lines - 1) * down + TAILS * size;
}

/** A box, ticked where it is made. @param at its upper left corner */
export function boxShapes({ x, y }: Point, made: boolean): PaperShape[] {
  const corners = [
    { x, y },
    { x: x + BOX, y },
    { x: x + BOX, y: y + BOX },
    { x, y: y + BOX },
  ];
  const sides = corners.map((from, i) => line(from, corners[(i + 1) % 4] ?? from, 0.25));
  if (!made) return sides;
  const tick = [
    { x: x + 0.7, y: y + 2.1 },
    { x: x + 1.6, y: y + 3.2 },
    { x: x + 3.4, y: y + 0.7 },
  ];
  return [...sides, { kind: 'path', points: tick, weight: 0.6, dash: [] }];
}

/** Signs that the letters of the pages lack, by what they have for them. */
const SIGNS: Readonly<Record<string, string>> = {
  '−': '–',
  '→': '›',
  '↔': '–',
  '≥': 'at least ',
  '≤': 'at most ',
  '↳': '',
  '✓': '',
};

/** A text in the letters that the pages have, as far as there is another sign for it. */
function printable(text: string): string {
  return text.normalize('NFC').replace(/[−→↔≥≤↳✓]/gu, (sign) => SIGNS[sign] ?? sign);
}
