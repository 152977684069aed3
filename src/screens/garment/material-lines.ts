import { materialLineWords as words } from '#words/garment/garment-material-words.ts';
import { materialsOf } from '../../garment/materials/materials.ts';
import type { Garment } from '../../garment/record/record.ts';
import { materialSentences } from './material-sentences.ts';
import { materialAmount, materialName } from './materials-said.ts';
import { asSentence } from './names.ts';
import type { Telling } from './told-words.ts';

/** A material as it may be printed. */
export interface MaterialLine {
  /** `[x]` where all of it is there. */
  mark: string;
  there: boolean;
  name: string;
  /** How much to buy. */
  amount: string;
  /** What is to be said of it beside, as sentences. */
  notes: readonly string[];
}

/** Everything to have at hand for a garment, as lines. */
export function materialLines(record: Garment, telling: Telling): MaterialLine[] {
  return materialsOf(record, telling.answer).all.map((one) => ({
    mark: words[one.ticked ? 'there' : 'open'],
    there: one.ticked,
    name: materialName(telling, one),
    amount: materialAmount(telling, one),
    notes: materialSentences(telling, one).map(asSentence),
  }));
}
