import { namelessWords, placeInGarment } from '#words/garment/garment-trouble-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { withUnits } from '../../../calculation/with-units.ts';
import { linkOf } from '../../../garment/record/parts.ts';
import { fieldText } from '../../../garment/work-out/field-text.ts';
import { placeOfLetter } from '../../../lengths/taken.ts';
import { linkName, type Named } from './names.ts';

/** What stands in a field, whatever that is, for reading: what is taken by its name in brackets. */
export function partsText(named: Named, parts: unknown, isLength: boolean): string {
  const { text, taken, how } = fieldText(parts);
  const said = [...text].map((one) => {
    const part = taken[placeOfLetter(one)];
    if (!part) return one;
    const link = linkOf(part);
    const name = link ? linkName(named, link) : namelessWords.output;
    return placeInGarment.taken(name);
  });
  return isLength ? unitOn(said.join(''), how.unit) : said.join('');
}

/** A bare length is said with the unit it was typed in. */
function unitOn(text: string, unit: Bench['unit']): string {
  return text.trim() === '' ? '' : withUnits(text, unit);
}
