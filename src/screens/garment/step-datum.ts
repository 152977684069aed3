import { isStepDatum, stepDatumWords } from '#words/datum-words.ts';
import { placeWords } from '#words/place-words.ts';
import type { Step } from '../../calculation/output.ts';

/** Where the tape's zero is held for a step: "from the fold"; empty where nothing is measured. */
export function datumSaid(datum: Step['datum']): string {
  return isStepDatum(datum) ? stepDatumWords(datum) : placeWords(datum);
}
