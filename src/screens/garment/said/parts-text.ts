import { namelessWords, placeInGarment } from '#words/garment/garment-trouble-words.ts';
import { linkOf } from '../../../garment/record/parts.ts';
import type { LinkPart, PutPart } from '../../../garment/record/record.ts';
import { fieldText, isLengthKind } from '../../../garment/work-out/field-text.ts';
import { sourceOf } from '../../../garment/work-out/links.ts';
import { placeOfLetter } from '../../../lengths/taken.ts';
import { linkName, type Named } from './names.ts';

/**
 * What stands in a field, whatever that is, for reading: what is taken by its name in brackets, and every
 * bare length with the unit it was typed in.
 */
export function partsText(named: Named, parts: unknown, isLength: boolean): string {
  const { text, taken } = fieldText(parts, (part) => takesLength(named, part), isLength);
  const said = [...text].map((one) => {
    const part = taken[placeOfLetter(one)];
    if (!part) return one;
    const link = linkOf(part);
    const name = link ? linkName(named, link) : namelessWords.output;
    return placeInGarment.taken(name);
  });
  return said.join('');
}

/** Whether what is taken is a length; undefined where it is gone. */
function takesLength({ answer }: Named, part: LinkPart | PutPart): boolean | undefined {
  const { quantities } = answer.sound;
  const source = sourceOf(part, '', { quantities, works: answer.works });
  return 'gone' in source ? undefined : isLengthKind(source.kind);
}
