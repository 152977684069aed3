import type { Bench } from '../calculation/bench.ts';
import { downToGraduation, upToGraduation } from '../lengths/graduation.ts';
import { type ExactLength, type Length, length, ZERO } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { showExact } from '../lengths/show-length.ts';
import type { BenchUnit } from '../lengths/unit.ts';
import { join, tailOf, withoutUnit } from './pad-edit.ts';

const SHOWABLE: readonly string[] = ['mm', 'cm', 'in'];

/**
 * Moves the last number of a text by some graduations of its tape, never below zero.
 * A number off the graduations goes to the next one in that direction.
 * A text that cannot be read is left alone; an empty one counts as zero.
 */
export function nudge(text: string, bench: Bench, by: number): string {
  const tail = tailOf(text);
  const unit = tail.unit.trim() || bench.unit;
  const now = tail.number.trim() === '' ? ZERO : lengthOf(tail.number + tail.unit, bench.unit);
  if (now === undefined || !SHOWABLE.includes(unit)) return text;
  const step = length(Math.abs(by));
  const moved = Math.max(0, next(now, step, Math.sign(by)));
  const number = withoutUnit(showExact(moved as ExactLength, unit as BenchUnit), bench.decimalMark);
  return join({ ...tail, number });
}

/** The next graduation up or down from a length. */
function next(now: Length, step: Length, direction: number): number {
  return direction > 0 ? downToGraduation(now, step) + step : upToGraduation(now, step) - step;
}

function lengthOf(text: string, unit: BenchUnit): Length | undefined {
  const reading = readLength(text, unit);
  return reading.ok ? reading.value : undefined;
}

/** A nudge of the last number, written in its unit; undefined for a unit that can't be nudged. */
export function nudgeText(unit: string, bench: Bench, step: Length): string | undefined {
  if (!SHOWABLE.includes(unit)) return undefined;
  return withoutUnit(showExact(step, unit as BenchUnit), bench.decimalMark);
}

/** Moves a count by some; never below zero. What is no whole number is left alone. */
export function nudgeCount(text: string, by: number): string {
  const now = text.trim() === '' ? 0 : Number(text.trim());
  return Number.isSafeInteger(now) ? String(Math.max(0, now + by)) : text;
}
