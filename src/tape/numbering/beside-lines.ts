import type { Sheet } from '../graduations/sheet.ts';
import { type LongLine, type Side, seenUpTo } from '../graduations/tick-classes.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import type { DigitsBetween } from './digits-between.ts';
import { CLEAR_MARGIN } from './limits.ts';

/** Where numbers stand against the line they label, in the direction their digits are read. */
export type Placing = 'centred' | 'before' | 'after' | 'unsure';

/** Which line numbers label. */
export interface NumberedLine {
  /** The graduation of the first agreeing number's value. */
  readonly tick: number;
  readonly placing: Placing;
  readonly doubtful: boolean;
  /** Digits on the lines between say so too. */
  readonly counted: boolean;
}

/** What is known of the lines beside the numbers. */
export interface LinesBeside {
  readonly sheet: Sheet;
  readonly pattern: TickPattern;
  readonly ticksPerNumber: number;
  /** How far lines can be seen before the digits begin, in tenths of a graduation. */
  readonly beforeDigits: number;
  readonly between: DigitsBetween | undefined;
}

/** The longest lines of a fold, as far as they stand out from what else stands there. */
export type LongLines = LongLine & { readonly cut: boolean };

/** On the side of the digits, ink where they stand is theirs: over a short line it would look like a long one. */
export function longLines(
  pattern: TickPattern,
  fold: number,
  side: Side,
  beforeDigits: number,
): LongLines {
  const whole = pattern.classes(fold, side);
  const near = seenUpTo(whole, beforeDigits);
  const far = pattern.classes(fold, side === 1 ? -1 : 1);
  const cut = Math.max(...whole.lengths) >= beforeDigits;
  if (far.margin <= near.margin + CLEAR_MARGIN) return { ...near, cut };
  // A line that is short on the side of the numbers is the longest on neither: that is dirt, or the tape's edge.
  const isShort = (near.lengths[far.longAt] ?? 0) < Math.max(...near.lengths) - CLEAR_MARGIN;
  return isShort ? { ...near, margin: 0, cut } : { ...far, cut: false };
}
