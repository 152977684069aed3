import { placeOfLetter, withoutLetters } from '../../lengths/taken.ts';
import type { BenchUnit } from '../../lengths/unit.ts';
import type { LinkPart, Part, PutPart, TextPart } from '../record/record.ts';

/** How a field's text is written: the bench it is typed on. */
interface Written {
  unit: BenchUnit;
  decimalMark: '.' | ',';
}

const LETTERS = /([\ue000-\uf8ff])/u;
const LAST_LETTER = /[\ue000-\uf8ff]$/u;

/**
 * A text with a letter for each thing taken, as the parts a field keeps: the inverse of `fieldText`.
 * A letter that stands for nothing is left out. A field is never kept without a part.
 */
export function partsOf(
  text: string,
  taken: readonly (LinkPart | PutPart)[],
  { unit, decimalMark }: Written,
): Part[] {
  const typed = (its: string): TextPart => ({
    text: withoutLetters(its),
    unit,
    ...(decimalMark === ',' && { mark: ',' }),
  });
  const parts = text.split(LETTERS).flatMap((piece, i): Part[] => {
    const part = i % 2 === 1 ? taken[placeOfLetter(piece)] : piece && typed(piece);
    return part ? [part] : [];
  });
  return parts.length > 0 ? parts : [typed('')];
}

/**
 * What typing makes of a text that ends with something taken: a digit replaces it, since it
 * means nothing there; a sign or a bracket goes on from it; a unit, which it has, is nothing.
 */
export function typedOn(before: string, after: string): string {
  const base = before.trimEnd();
  if (!(LAST_LETTER.test(base) && after.startsWith(base))) return after;
  const added = after.slice(base.length).trim();
  if (added === '' || /^[+−–\-×*÷;)]/u.test(added)) return after;
  return /^[\d.,½¼¾⅐-⅞]/u.test(added) ? base.slice(0, -1) + added : before;
}

/**
 * Where something that is taken comes to stand: after a sign or an open bracket, else in the place
 * of the number that stands there last. Of a closed bracket, as of what is to be typed anew, it is all.
 */
export function withTaken(text: string, letter: string, anew: boolean): string {
  const base = text.trimEnd();
  if (anew || base.endsWith(')')) return letter;
  const [head = ''] = /^.*[+−–×*÷;(]\s*/u.exec(text) ?? [];
  return head + letter;
}

/** Whether what comes next in a text is a factor, so that a count belongs there, too. */
export function isFactorNext(text: string): boolean {
  return /[×*÷]\s*$/u.test(text);
}
