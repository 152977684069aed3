import { readLengths } from '../lengths/read-lengths.ts';
import type { BenchUnit } from '../lengths/unit.ts';

/** Any two units that differ: what reads the same in both has its units written. */
const OTHERS: readonly BenchUnit[] = ['mm', 'in'];

/**
 * The same text with its unit written after every bare length, so that it means
 * the same on a bench of another unit; also of one too long to be taken, which another unit would
 * make short enough. Text that can't be read is left as typed.
 */
export function withUnits(typed: string, unit: BenchUnit): string {
  const meant = readLengths(typed, unit);
  if (!(meant.ok || isTooLong(typed, unit)) || isWritten(typed)) return typed;
  const terms = typed.split(/(\s*[+−–;]\s*|\s+-\s+|(?<=\d)-(?=\d+(?![\d/⁄])))/u);
  const written = [
    terms.map((term, i) => (i % 2 === 1 ? term : withUnit(term, unit))).join(''),
    `(${typed}) ${unit}`, // numbers multiplied as sums: all of it has the one unit
  ];
  return written.find((one) => isWritten(one) || isTooLongWritten(one)) ?? typed;
}

function withUnit(term: string, unit: BenchUnit): string {
  if (term.trim() === '' || /[a-wyz"″”'′’]/i.test(term)) return term;
  const [, number = term, rest = ''] = /^([^÷)]*?)(\s*[÷)].*)?$/su.exec(term) ?? [];
  return `${number.trimEnd()} ${unit}${rest}`;
}

function isWritten(typed: string): boolean {
  const [one, other] = OTHERS.map((unit) => readLengths(typed, unit));
  return one?.ok === true && other?.ok === true && String(one.values) === String(other.values);
}

function isTooLong(typed: string, unit: BenchUnit): boolean {
  const read = readLengths(typed, unit);
  return !read.ok && read.fault.kind === 'too-long';
}

/** What it comes to isn't known: in every unit it is too long. */
function isTooLongWritten(typed: string): boolean {
  return OTHERS.every((unit) => isTooLong(typed, unit));
}
