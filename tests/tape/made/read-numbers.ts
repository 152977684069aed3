import type { NumberCell, NumberRead } from '../../../src/tape/numbers/number-row.ts';

/** A number as wide as given, in graduations, with its middle on a graduation. */
export function cellAt(middle: number, width = 1): NumberCell {
  const [left, right] = [middle - width / 2, middle + width / 2];
  return { components: [], x0: 0, x1: 0, y0: 0, y1: 0, left, right, middle };
}

export function readAt(middle: number, value: number): NumberRead {
  return { cell: cellAt(middle), value, text: String(value), confidence: 90 };
}

/** Numbers read on the lines 0, 1, 2 and so on. */
export function readsOn(values: readonly number[]): NumberRead[] {
  return values.map((value, line) => readAt(line, value));
}

export function lineOf({ middle }: NumberCell): number {
  return middle;
}
