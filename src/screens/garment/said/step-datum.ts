import { placeWords } from '#words/common/place-words.ts';
import { isStepDatum, stepDatumWords } from '#words/garment/datum-words.ts';
import type { Kind, Step } from '../../../calculation/output.ts';

/**
 * Where the tape's zero is held for a step: "from the fold"; empty where nothing is measured, or
 * where it is held at one end of what is measured.
 */
export function datumSaid(datum: Step['datum'], kind: Kind | undefined): string {
  if (datum === 'zero' && kind !== 'run') return '';
  return isStepDatum(datum) ? stepDatumWords(datum) : placeWords(datum);
}
