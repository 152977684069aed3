import type { Reading } from '../../calculation/field-spec.ts';
import { withUnits } from '../../calculation/with-units.ts';
import { letterOf, placeOfLetter, withoutLetters } from '../../lengths/taken.ts';
import { type BenchUnit, benchUnit } from '../../lengths/unit.ts';
import { MOST_LINKS } from '../record/limits.ts';
import { isLink } from '../record/parts.ts';
import type { LinkPart, PutPart, TextPart } from '../record/record.ts';
import { isKind, isObject, isPlace, isRun } from '../record/sound-values.ts';

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

const NO_TEXT: FieldText = {
  text: '',
  how: { unit: 'cm', decimalMark: '.' },
  taken: [],
  starts: [],
};

/** The parts of a field, which may be anything, as one text in the unit of the first text there is. */
export function fieldText(parts: unknown): FieldText {
  if (parts === undefined) return NO_TEXT;
  if (!Array.isArray(parts)) return { ...NO_TEXT, trouble: 'damaged' };
  const typed = parts.find(isTextPart);
  const unit = typed?.unit ?? 'cm';
  const taken: (LinkPart | PutPart)[] = [];
  const starts: number[] = [];
  let text = '';
  for (const [i, part] of parts.entries()) {
    starts.push(text.length);
    if (isTextPart(part)) {
      text += partText(part, unit, isTaken(parts[i - 1]), isTaken(parts[i + 1]));
    } else if (isTaken(part)) {
      text += letterOf(taken.length);
      taken.push(part);
    } else return { ...NO_TEXT, trouble: 'damaged' };
  }
  const how = { unit, decimalMark: typed?.mark ?? '.' } as const;
  const many = taken.length > MOST_LINKS;
  return { text, how, taken, starts, ...(many && { trouble: 'too many links' }) };
}

/** Which part of a field a place of its text is in, from 0. */
export function partAt({ starts }: FieldText, at: number): number {
  return Math.max(0, starts.filter((start) => start <= at).length - 1);
}

/** Whether a piece of text is one letter of what is taken. */
export function isLetter(text: string, { taken }: FieldText): boolean {
  return text.length === 1 && taken[placeOfLetter(text)] !== undefined;
}

/** Text typed on a bench of another unit than the field's first gets its unit written, but for a factor beside a link. */
function partText(part: TextPart, unit: BenchUnit, after: boolean, before: boolean): string {
  const text = withoutLetters(part.text);
  if (part.unit === unit) return text;
  const pieces = text.split(/(\s*[+−–-]\s*)/u);
  return pieces
    .map((piece, i) => {
      const factor =
        (after && i === 0 && /^\s*[×*·xX÷]/u.test(piece)) ||
        (before && i === pieces.length - 1 && /[×*·xX]\s*$/u.test(piece));
      return i % 2 === 1 || factor ? piece : withUnits(piece, part.unit);
    })
    .join('');
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
