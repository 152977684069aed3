import type { Lettering } from './pen.ts';

/** What truth speaks of; feet are only on gauges that aren't to be read. */
export type PrintedUnit = 'cm' | 'mm' | 'inch' | 'foot';

export const mmOf: Readonly<Record<PrintedUnit, number>> = {
  cm: 10,
  mm: 1,
  inch: 25.4,
  foot: 304.8,
};

/** How a scale's numbers stand. */
export interface NumberSpec {
  readonly lettering: Lettering;
  /** Height of a digit, mm. */
  readonly height: number;
  /** Just before its line (where the smaller values are), on it, or after it. */
  readonly place: 'before' | 'on' | 'after';
  /** Quarter turns clockwise, seen with the tape running to the right. */
  readonly turned: 0 | 1 | 2 | 3;
  /** From the scale's edge to the middle of the digits, mm. */
  readonly across: number;
  /** Clear space between a number placed before or after and its line, mm. */
  readonly clear: number;
  /** Share of the ink's strength; red tens look paler in grey. */
  readonly strength?: (value: number) => number;
  /** What is printed for a value; nothing where undefined is given. */
  readonly text?: (value: number) => string | undefined;
  readonly heightOf?: (value: number) => number;
  /** Where a number stands otherwise than the rest. */
  readonly placeOf?: (value: number) => 'before' | 'on' | 'after';
}

/** A row of graduations with its numbers, along one edge of a tape. */
export interface ScaleSpec {
  readonly id: string;
  readonly unit: PrintedUnit;
  /** Graduations in one unit. */
  readonly subdivisions: number;
  /** Units from number to number. */
  readonly numberEvery: number;
  /** Where zero lies along the tape, mm. */
  readonly zero: number;
  /** Whether values grow along the tape or against it. */
  readonly direction: 1 | -1;
  /** First and last printed value, in units. */
  readonly first: number;
  readonly last: number;
  readonly edge: 'low' | 'high';
  /** From the edge of the tape to the outer end of the graduations, mm. */
  readonly inset: number;
  /** Longest first: every so many graduations, a line so long (mm). The last is for every one. */
  readonly lines: readonly { readonly every: number; readonly mm: number }[];
  /** Width of a line, mm. */
  readonly stroke: number;
  readonly numbers?: NumberSpec;
  /** A stretch, in units, divided so many times finer. */
  readonly finer?: { readonly first: number; readonly last: number; readonly times: number };
  /** Single numbers between graduations: 1 to 9 on the millimetres. */
  readonly between?: NumberSpec;
  /** Lean of the lines: mm along for each mm across. */
  readonly lean?: number;
  /** Shifts a line away from where it belongs, in mm: only for what isn't a true scale. */
  readonly jitter?: (index: number) => number;
}
