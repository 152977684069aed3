import type { Reading } from '../../calculation/field-spec.ts';
import type { Kind } from '../../calculation/output.ts';
import { withUnits } from '../../calculation/with-units.ts';
import { letterOf, placeOfLetter, withoutLetters } from '../../lengths/taken.ts';
import { type BenchUnit, benchUnit } from '../../lengths/unit.ts';
import { MOST_LINKS } from '../record/limits.ts';
import { isLink } from '../record/parts.ts';
import type { LinkPart, PutPart, TextPart } from '../record/record.ts';
import { isKind, isObject, isPlace, isRun } from '../record/sound-values.ts';
import { bareTerms, type IsLength, type Span } from './bare-terms.ts';

/** What stands in a field as one text, with a letter where something is taken. */
export interface FieldText {
  text: string;
  how: Pick<Reading, 'unit' | 'decimalMark'>;
  /** What each letter stands for. */
  taken: readonly (LinkPart | PutPart)[];
  /** Where each part begins in the text. */
  starts: readonly number[];
  trouble?: 'damaged' | 'too many links';
}

/** Of a field in which nothing stands. */
export const NO_TEXT: FieldText = {
  text: '',
  how: { unit: 'cm', decimalMark: '.' },
  taken: [],
  starts: [],
};

/**
 * The parts of a field, which may be anything, as one text in the unit of the first text there is. What was
 * typed on a bench of another unit gets that one written where it is a length.
 * @param isLength whether what is taken is a length, where that is known
 * @param everywhere the unit is written at what was typed in that one, too: for reading, in a field of a length
 */
export function fieldText(
  parts: unknown,
  isLength: (part: LinkPart | PutPart) => boolean | undefined = isPutLength,
  everywhere = false,
): FieldText {
  if (parts === undefined) return NO_TEXT;
  if (!Array.isArray(parts)) return { ...NO_TEXT, trouble: 'damaged' };
  const typed = parts.find(isTextPart);
  const unit = typed?.unit ?? 'cm';
  const taken: (LinkPart | PutPart)[] = [];
  const pieces: { text: string; unit: BenchUnit }[] = [];
  for (const part of parts) {
    if (isTextPart(part)) pieces.push({ text: withoutLetters(part.text), unit: part.unit });
    else if (isTaken(part)) {
      pieces.push({ text: letterOf(taken.length), unit });
      taken.push(part);
    } else return { ...NO_TEXT, trouble: 'damaged' };
  }
  const how = { unit, decimalMark: typed?.mark ?? '.' } as const;
  const many = taken.length > MOST_LINKS;
  const known: IsLength = (letter) => {
    const part = taken[placeOfLetter(letter)];
    return part && isLength(part);
  };
  const joint = joined(pieces, everywhere ? undefined : unit, known);
  return { ...joint, how, taken, ...(many && { trouble: 'too many links' }) };
}

/** Of a number put in a link's place its kind is kept. */
const isPutLength = (part: LinkPart | PutPart) =>
  'put' in part ? isLengthKind(part.kind) : undefined;

export const isLengthKind = (kind: Kind): boolean => kind === 'length' || kind === 'run';

function joined(
  pieces: readonly { text: string; unit: BenchUnit }[],
  unit: BenchUnit | undefined,
  known: IsLength,
) {
  const typed = pieces.map(({ text }) => text).join('');
  const terms = pieces.some((piece) => piece.unit !== unit) ? bareTerms(typed, known) : [];
  const starts: number[] = [];
  let text = '';
  let at = 0;
  for (const piece of pieces) {
    const end = at + piece.text.length;
    starts.push(text.length);
    text += piece.unit === unit ? piece.text : withUnitsIn(typed, [at, end], terms, piece.unit);
    at = end;
  }
  return { text, starts };
}

/** A piece of a text with its unit written at the terms in it. */
function withUnitsIn(typed: string, [from, to]: Span, terms: readonly Span[], unit: BenchUnit) {
  let text = '';
  let at = from;
  for (const [start, end] of terms) {
    const [first, last] = [Math.max(start, from), Math.min(end, to)];
    if (first >= last) continue;
    text += typed.slice(at, first) + withUnits(typed.slice(first, last), unit);
    at = last;
  }
  return text + typed.slice(at, to);
}

/** Which part of a field a place of its text is in, from 0. */
export function partAt({ starts }: FieldText, at: number): number {
  return Math.max(0, starts.filter((start) => start <= at).length - 1);
}

/** Whether a piece of text is one letter of what is taken. */
export function isLetter(text: string, { taken }: FieldText): boolean {
  return text.length === 1 && taken[placeOfLetter(text)] !== undefined;
}

function isTextPart(part: unknown): part is TextPart {
  if (!isObject(part) || typeof part.text !== 'string') return false;
  const { mark } = part;
  const known = benchUnit(typeof part.unit === 'string' ? part.unit : undefined) !== undefined;
  return known && (mark === undefined || mark === '.' || mark === ',');
}

function isTaken(part: unknown): part is LinkPart | PutPart {
  return isLinkPart(part) || isPutPart(part);
}

function isLinkPart(part: unknown): part is LinkPart {
  return isObject(part) && isLink(part.link);
}

function isPutPart(part: unknown): part is PutPart {
  if (!isObject(part) || !isKind(part.kind)) return false;
  const { put, kind, plusMinus } = part;
  const sure = plusMinus === undefined || (isPlace(plusMinus) && plusMinus >= 0);
  return sure && (kind === 'run' ? isRun(put) : isPlace(put));
}
