import { randomFrom } from '../../tapes/random.ts';
import type { Source } from './cells.ts';
import { printed, stroked } from './letter-masks.ts';
import { trainedRubbish } from './rubbish.ts';
import { settling, trained } from './typefaces.ts';

const OWN_FORMS = 80;
export const SHARE_OF_RUBBISH = 0.35;

/** What digits are learnt from. */
export function trainedSource(seed: number): Source {
  const letters = printed(trained);
  return {
    digits: [...letters, ...stroked(randomFrom(seed), OWN_FORMS)],
    letters,
    rubbish: trainedRubbish,
    shareOfRubbish: SHARE_OF_RUBBISH,
    varied: 0.6,
  };
}

/** What is settled on: other typefaces, as they are printed. */
export function settlingSource(): Source {
  const letters = printed(settling);
  return { digits: letters, letters, rubbish: trainedRubbish, shareOfRubbish: SHARE_OF_RUBBISH };
}
