import type { QuarterTurns } from '../characters/page-drawing.ts';
import type { NumberCell, NumberRead, NumberRow } from '../numbers/number-row.ts';
import { median } from '../numerics/order.ts';
import type { Progression } from './progression.ts';

/** Numbers of any subdivision that rise evenly along one row, read in one orientation. */
export interface FoundProgression {
  readonly row: NumberRow;
  readonly turns: QuarterTurns;
  /** All that was read of the row. */
  readonly reads: readonly NumberRead[];
  readonly progression: Progression;
}

/** Where some edge of the first agreeing number stands, by all of them. */
export function placeOf(
  { progression: rise }: FoundProgression,
  edge: (cell: NumberCell) => number,
): number {
  const firstValue = rise.agreeing[0]?.value ?? 0;
  return median(
    rise.agreeing.map(({ cell, value }) => edge(cell) - (value - firstValue) / rise.perTick),
  );
}
