import type { TapeUnit } from '../graduations/tape-unit.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import type { Placing } from '../numbering/beside-lines.ts';
import type { NumberRead } from '../numbers/number-row.ts';
import type { Place } from '../picture/space.ts';
import { SPARSE_CM, SPARSE_INCH } from './limits.ts';

/** A number on the row: what was read, and the graduation its middle stands at. */
export interface PlacedNumber {
  readonly value: number;
  readonly tick: number;
  readonly read: NumberRead;
  /** The middle of its print. */
  readonly at: Place<'measuring'>;
}

/**
 * What the numbers beside one row of graduations say of it. The value of graduation k is
 * anchorValue + direction · step/ticksPerNumber · (k − anchorTick), in `unit`.
 */
export interface Claim {
  readonly unit: TapeUnit;
  readonly mmPerTick: number;
  /** From one printed number to the next, in values and in graduations. */
  readonly step: number;
  readonly ticksPerNumber: number;
  readonly anchorTick: number;
  readonly anchorValue: number;
  readonly direction: 1 | -1;
  readonly placing: Placing;
  /** Numbers that say just this, and those that say something else, lost digits excepted. */
  readonly agreeing: readonly PlacedNumber[];
  readonly contrary: readonly PlacedNumber[];
  readonly partial: number;
  /** The most numbers that agree on anything else. */
  readonly second: number;
  /** Cells of the row, whether read or not. */
  readonly cells: number;
  /** Height of the digits as a share of the distance between numbers. */
  readonly digitShare: number;
  /** Where the numbers run beside the row, in graduations. */
  readonly across: number;
  /** Its numbers run across the tape, each turned by a quarter against the row. */
  readonly turned?: boolean;
  readonly pattern: TickPattern;
  /** Digits on the lines between count up to its numbers: they can't be those of other lines. */
  readonly counted?: boolean;
  /** The same lines before a gap, read for themselves, go on to just these values. */
  readonly foretold?: boolean;
  /** What reading itself left open. */
  readonly doubts: ReadonlySet<Doubt>;
}

/** Which line a number labels, or which number it is; and what it counts. */
export type Doubt = 'line' | 'unit';

/** Why the numbers beside a row said nothing. */
export type NoClaim = 'no-numbers' | 'few-numbers' | 'numbers-disagree' | 'unit-unknown';

export type Claimed =
  | { readonly ok: true; readonly claim: Claim }
  | { readonly ok: false; readonly why: NoClaim };

/** Of two reasons the one that got further. */
export function laterReason(one: NoClaim, other: NoClaim): NoClaim {
  const order: readonly NoClaim[] = [
    'no-numbers',
    'few-numbers',
    'numbers-disagree',
    'unit-unknown',
  ];
  return order.indexOf(one) >= order.indexOf(other) ? one : other;
}

/**
 * Two or five lines to a number are rare, and so are eighths whose long lines can't be identified:
 * finer lines between them, or beside them, may have been passed over.
 */
export function isSparse({ unit, step, ticksPerNumber, doubts, pattern }: Claim): boolean {
  if (unit === 'inch') return ticksPerNumber <= SPARSE_INCH && doubts.has('line') && !pattern.valid;
  return unit === 'cm' && step === 1 && ticksPerNumber <= SPARSE_CM && doubts.has('unit');
}
