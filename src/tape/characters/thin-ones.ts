import type { Component } from '../numbers/components.ts';
import type { NumberCell, NumberRow } from '../numbers/number-row.ts';
import { OFF_ROW, SHORTEST, TALLEST, THIN } from './limits.ts';

/**
 * The digits of a number with the plain 1s that the character reader passed over: of two strokes
 * side by side it often tells one. What was read stays as it is where the patches don't account
 * for it digit by digit.
 *
 * @param backwards the number was read from right to left of the sheet.
 */
export function withThinOnes(
  text: string,
  { components }: NumberCell,
  row: NumberRow,
  backwards: boolean,
): string {
  if (row.turned || components.length <= text.length) return text;
  const isOne = (part: Component) => isThin(part, components, row);
  const recognised = [...text.replaceAll('1', '')];
  if (recognised.length !== components.filter((part) => !isOne(part)).length) return text;
  const along = [...components].sort((one, other) => one.x0 - other.x0);
  const read = backwards ? along.reverse() : along;
  return read.map((part) => (isOne(part) ? '1' : recognised.shift())).join('');
}

function isThin(part: Component, all: readonly Component[], row: NumberRow): boolean {
  if (part.width > THIN * part.height) return false;
  const wide = all.filter(({ width, height }) => width > THIN * height);
  const height = wide.length > 0 ? Math.max(...wide.map((one) => one.height)) : row.height;
  const middle = wide[0]?.middleY ?? part.middleY;
  const share = part.height / height;
  return share > SHORTEST && share < TALLEST && Math.abs(part.middleY - middle) < OFF_ROW * height;
}
