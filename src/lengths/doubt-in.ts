import type { Length } from './length.ts';
import { readLength } from './read-length.ts';
import type { BenchUnit } from './unit.ts';

/** The end of what a tape was read as: "46.32 ± 0.02 cm". */
const DOUBT = /± ?(?<number>[\d.,]+) ?(?<unit>[a-z]+)\s*$/u;

/**
 * How sure a text says that its number is: 0.02 cm of "46.32 ± 0.02 cm".
 *
 * @param unit what is meant where a text names none
 * @returns in 1/8000 mm; undefined where the text says nothing of it
 */
export function doubtIn(text: string, unit: BenchUnit, mark?: '.' | ','): Length | undefined {
  // Where nothing is said, nothing is read: that is no length.
  const { number = '', unit: own = '' } = DOUBT.exec(text)?.groups ?? {};
  const read = readLength(`${number} ${own}`, unit, mark);
  return read.ok && read.value > 0 ? read.value : undefined;
}
