import type { Component } from './components.ts';
import { FAINT, LOST_DIGIT, SPACED_FEWEST, SPACED_SHARE, SPACED_WIDEST } from './limits.ts';

/** A sheet, how bright its ground is, and where there was ink before lines were wiped. */
export interface Printed {
  readonly width: number;
  readonly values: Float32Array;
  readonly ground: Float32Array;
  readonly before: Uint8Array;
}

/** The patches of a number, and whether a digit may be missing between two of them. */
interface Parts {
  readonly parts: readonly Component[];
  readonly gap: boolean;
}

/**
 * Which numbers of a row lack a digit. Where most of them have like gaps with no ink in them, nor a
 * trace of any, no digit was lost there: their digits are printed apart.
 */
export function gapsOf(numbers: readonly Parts[], height: number, print: Printed): boolean[] {
  const isBare = numbers.map(({ parts, gap }) => gap && areBare(parts, height, print));
  const several = numbers.filter(({ parts }) => parts.length > 1).length;
  const bare = isBare.filter((is) => is).length;
  const isSpaced = bare >= SPACED_FEWEST && bare >= SPACED_SHARE * several;
  return numbers.map(({ gap }, i) => gap && !(isSpaced && isBare[i]));
}

/** Whether nothing stands in the wide gaps of a number, and none is as wide as a digit with room to its sides. */
function areBare(parts: readonly Component[], height: number, print: Printed): boolean {
  const top = Math.min(...parts.map(({ y0 }) => y0));
  const bottom = Math.max(...parts.map(({ y1 }) => y1));
  const ink = Math.min(...parts.map(({ x0, x1 }) => darkest(x0, x1, top, bottom, print)));
  return parts.every((part, i) => {
    const last = parts[i - 1];
    if (!last) return true;
    const wide = part.x0 - last.x1 - 1;
    if (wide < LOST_DIGIT * height) return true;
    if (wide > SPACED_WIDEST * height) return false;
    const [from, to] = [last.x1 + 2, part.x0 - 2];
    return (
      !isInked(from, to, top, bottom, print) && darkest(from, to, top, bottom, print) < FAINT * ink
    );
  });
}

function isInked(from: number, to: number, top: number, bottom: number, print: Printed): boolean {
  for (let y = top; y <= bottom; y++) {
    const start = y * print.width;
    if (print.before.subarray(start + from, start + to + 1).includes(1)) return true;
  }
  return false;
}

/** How much darker than the ground the darkest column is, on the whole of its height. */
function darkest(
  from: number,
  to: number,
  top: number,
  bottom: number,
  { width, values, ground }: Printed,
): number {
  let most = 0;
  for (let x = from; x <= to; x++) {
    let sum = 0;
    for (let y = top; y <= bottom; y++) {
      const at = y * width + x;
      sum += Math.max(0, (ground[at] as number) - (values[at] as number));
    }
    most = Math.max(most, sum / (bottom - top + 1));
  }
  return most;
}
