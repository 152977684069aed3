import {
  garmentMaterialWords,
  materialLineWords as words,
} from '#words/garment/garment-material-words.ts';
import { garmentMaterialsWords } from '#words/garment/garment-materials-words.ts';
import { type MaterialNow, materialsOf } from '../../../garment/materials/materials.ts';
import type { Garment } from '../../../garment/record/record.ts';
import { asSentence } from '../said/names.ts';
import type { Telling } from '../said/told-words.ts';
import { materialSentences } from './material-sentences.ts';
import { materialAmount, materialName } from './materials-said.ts';

/** A material as it may be printed. */
export interface MaterialLine {
  /** `[x]` where all of it is there. */
  mark: string;
  there: boolean;
  name: string;
  /** How much to buy. */
  amount: string;
  /** What is to be said of it beside, as sentences; not the amount again. */
  notes: readonly string[];
}

/** Everything to have at hand for a garment, as lines. */
export function materialLines(record: Garment, telling: Telling): MaterialLine[] {
  return materialsOf(record, telling.answer).all.map((one) => {
    const amount = materialAmount(telling, one);
    const told = materialSentences(telling, one).filter(
      (said) => said !== garmentMaterialWords.sum(amount),
    );
    return {
      mark: words[one.ticked ? 'there' : 'open'],
      there: one.ticked,
      name: nameAndKind(telling, one),
      ...{ amount, notes: told.map(asSentence) },
    };
  });
}

/** What is had by length is called by its work, which doesn't say whether it is lace, tape or thread. */
function nameAndKind(telling: Telling, one: MaterialNow): string {
  const name = materialName(telling, one);
  const kind = garmentMaterialsWords.kinds[one.kind];
  const [what = ''] = kind.toLowerCase().split(/[^\p{L}]/u);
  const says = one.said.name !== undefined || name.toLowerCase().includes(what);
  return one.form !== 'length' || says ? name : words.ofKind(name, kind);
}
