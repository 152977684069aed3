import { readLength } from '../../lengths/read-length.ts';
import { letterOf } from '../../lengths/taken.ts';
import type { FieldText } from './field-text.ts';

/** A length that was read, as it stands in a field, and how sure it is: both in 1/8000 mm. */
export interface ReadLength {
  value: number;
  plusMinus: number;
}

/** What a tape was read as: "46.32 ± 0.02 cm", "46 5/16 ± 0.02 in". */
const READ =
  /(?<number>\d[\d.,]*(?: \d+[/⁄]\d+)?|\d+[/⁄]\d+) ?± ?(?<off>[\d.,]+) ?(?<unit>[a-z]+)/gu;
/** Of a longer list none is followed: each would be worked out at both its ends. */
const MOST_READ = 24;

/**
 * A field's text with a letter in the place of each length that was read, so that how sure it is
 * goes through sums and products as it should; their letters come after those of what is taken.
 */
export function withReadings(text: FieldText): { text: FieldText; read: readonly ReadLength[] } {
  const found = text.text.includes('±') ? [...text.text.matchAll(READ)] : [];
  const read: ReadLength[] = [];
  const cuts: { at: number; end: number }[] = [];
  let left = '';
  let from = 0;
  for (const match of found) {
    const one = lengthOf(match.groups ?? {}, text);
    if (!one) continue;
    left += text.text.slice(from, match.index) + letterOf(text.taken.length + read.length);
    from = match.index + match[0].length;
    cuts.push({ at: match.index, end: from });
    read.push(one);
  }
  if (read.length === 0 || read.length > MOST_READ) return { text, read: [] };
  const starts = text.starts.map((start) => start - shorterBy(cuts, start));
  return { text: { ...text, text: left + text.text.slice(from), starts }, read };
}

function lengthOf(
  { number = '', off = '', unit = '' }: Record<string, string | undefined>,
  { how }: FieldText,
): ReadLength | undefined {
  const [value, plusMinus] = [number, off].map((one) =>
    readLength(`${one} ${unit}`, how.unit, how.decimalMark),
  );
  if (!value?.ok || !plusMinus?.ok || plusMinus.value <= 0) return undefined;
  return { value: value.value, plusMinus: plusMinus.value };
}

/** By how much a text is shorter before a place of it. */
function shorterBy(cuts: readonly { at: number; end: number }[], place: number): number {
  return cuts.reduce((sum, { at, end }) => (end <= place ? sum + end - at - 1 : sum), 0);
}
