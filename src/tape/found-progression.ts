import type { NumberRead, NumberRow } from './number-row.ts';
import type { QuarterTurns } from './page-drawing.ts';
import type { Progression } from './progression.ts';

/** Numbers of any subdivision that rise evenly along one row, read in one orientation. */
export interface FoundProgression {
  readonly row: NumberRow;
  readonly turns: QuarterTurns;
  /** All that was read of the row. */
  readonly reads: readonly NumberRead[];
  readonly progression: Progression;
}
