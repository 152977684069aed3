import { type ExactLength, exactLength, inches, type Length, mm } from '../../lengths/length.ts';
import { mustBePositiveIfGiven } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';
import { ZIP_LEFT, ZIP_PAIRS, ZIP_TAIL, type ZipPair } from '../sources/plackets.ts';

/** A zip for an opening. */
export interface Zip {
  /** As it is bought, if it is: undefined where the maker has one, or none is sold so long. */
  pair: ZipPair | undefined;
  /** Between its stops; of a pair the shorter one. The opening, where none is sold so long. */
  long: ExactLength;
  /** Below the opening. */
  left: ExactLength;
  /** Where more is left than may be: where it gets a new stop, and where it is cut. */
  shorten: { stop: ExactLength; cut: ExactLength } | undefined;
}

/** How long a zip of a trade pair surely is: its inches and centimetres are up to 5 mm apart. */
export function surely(pair: ZipPair): Length {
  return Math.min(inches(pair.inches), mm(10 * pair.cm)) as Length;
}

/**
 * The zip for an opening: the one there is, or the shortest that is sold and surely long enough. Up to an
 * inch may be left below the opening; a longer one gets a new stop at its end and is cut below that.
 *
 * Source: `ZIP_LEFT`, `ZIP_PAIRS`; how much is left below a new stop is common practice, no source.
 * Problems: a zip shorter than the opening.
 */
export function zipFor(open: ExactLength, there: Length | undefined): Outcome<Zip> {
  return answerUnless(mustBePositiveIfGiven('zip', there), () => {
    if (there !== undefined && there < open) {
      return refused({ kind: 'too-short', field: 'zip', least: open, given: there });
    }
    const pair =
      there === undefined ? ZIP_PAIRS.value.find((one) => surely(one) >= open) : undefined;
    const long = there ?? (pair ? surely(pair) : open);
    const left = exactLength(long - open);
    const cut = exactLength(open + ZIP_TAIL);
    const shorten = left > ZIP_LEFT.value ? { stop: open, cut } : undefined;
    return { ok: true, value: { pair, long, left, shorten } };
  });
}
