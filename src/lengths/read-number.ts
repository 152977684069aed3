import type { Read, ReadFaultKind } from './read-fault.ts';
import { readSum } from './sum.ts';
import type { Taken } from './taken.ts';

/** A plain number as typed. */
export type NumberReading = Read<{ readonly value: number }>;

/**
 * Reads a number that is not a length: `7`, `2.5`, `2,5`, `1/2`, `1 1/2`, sums of
 * such, and how often one length goes into another: `46.3 cm ÷ 8 mm`. Of either sign,
 * no larger than 2^53 − 1; a length alone is a fault.
 */
export function readNumber(typed: string, taken?: Taken): NumberReading {
  return read(typed, false, taken);
}

/** Reads a whole number, of either sign: a count below one is for the calculation to refuse. */
export function readCount(typed: string, taken?: Taken): NumberReading {
  return read(typed, true, taken);
}

function read(typed: string, asCount: boolean, taken: Taken | undefined): NumberReading {
  const sum = readSum(typed, undefined, undefined, taken);
  if (!sum.ok) return sum;
  const { over, under } = sum.value;
  const value = Number(over) / Number(under);
  const most = BigInt(Number.MAX_SAFE_INTEGER) * under;
  if (over > most || over < -most) return refuse(typed, 'too-large');
  if (asCount && over % under !== 0n) return refuse(typed, 'not-whole', Math.floor(value));
  return { ok: true, value: value + 0 }; // + 0 turns −0 into 0
}

function refuse(typed: string, kind: ReadFaultKind, below?: number): NumberReading {
  const text = typed.trim();
  return {
    ok: false,
    fault: { kind, at: typed.indexOf(text), text, ...(below !== undefined && { below }) },
  };
}
