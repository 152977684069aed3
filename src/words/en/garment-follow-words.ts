import type { Datum } from '../../sewing/run.ts';
import { placeWords } from './place-words.ts';

/** Following all marks of a garment, run after run. */
export const garmentFollowWords = {
  newRun: (name: string, datum: Datum) => `New run: ${name}. Measure ${placeWords(datum)}.`,
  asPlanned: 'Made, as planned.',
  keeping: 'Made, and being kept: not on the phone yet.',
  takenOff: (name: string) =>
    `${name} was taken off this garment in another tab. What you mark is kept with it: put it back on to see it.`,
  next: 'Marked. Next',
  onward: 'Next to make',
  notMade: 'Not made yet',
  respace: 'Space the rest anew',
  undoSpacing: 'Undo the new spacing',
  spacingFails: 'The rest can’t be spaced anew around what is made:',
  leftOut: (names: string) =>
    `Left out, since there is no answer: ${names}. The end of this says why.`,
};
