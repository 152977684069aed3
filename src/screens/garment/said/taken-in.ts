import { namelessWords, placeInGarment } from '#words/garment/garment-trouble-words.ts';
import { linkOf } from '../../../garment/record/parts.ts';
import { fieldText } from '../../../garment/work-out/field-text.ts';
import { placeOfLetter } from '../../../lengths/taken.ts';
import { linkName, type Named } from './names.ts';

/** A field of a work, or of a quantity, which has but one. */
interface Where {
  id: string;
  side: string;
  field: string;
}

/** What is taken at a part of a field, from 0; or where a letter of its text stands, in brackets; other text as it is. */
export function takenIn(named: Named, where: Where, at: number | string): string {
  const { answer } = named;
  const seen = answer.works.get(where.id);
  const side = seen?.sides.find((one) => one.side === where.side) ?? seen?.sides[0];
  const text =
    side?.texts.get(where.field) ?? fieldText(answer.sound.quantities.get(where.id)?.parts);
  if (typeof at === 'number') {
    const letter = text.text[text.starts[at] ?? 0] ?? '';
    return takenName(named, text, letter) ?? namelessWords.output;
  }
  const name = takenName(named, text, at);
  return name === undefined ? at : placeInGarment.taken(name);
}

function takenName(
  named: Named,
  { taken }: ReturnType<typeof fieldText>,
  letter: string,
): string | undefined {
  const part = taken[placeOfLetter(letter)];
  if (!part) return undefined;
  const link = linkOf(part);
  return link ? linkName(named, link) : namelessWords.output;
}
