import { type Band, type BandPieces, band, bandPieces } from '../../sewing/bands/band.ts';
import { mustBePositiveIfGiven } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import type { BandAsked } from './fields.ts';

/** A band as it was worked out, with what was asked. */
export interface Banded {
  asked: BandAsked;
  plan: Band;
  pieces: BandPieces;
}

/** All that is asked of a band, or every reason why not. */
export function banded(asked: BandAsked): Outcome<Banded> {
  const found = band(asked);
  if (!found.ok) return found;
  const plan = found.value;
  return answerUnless(mustBePositiveIfGiven('edge', asked.edge), () =>
    mapped(bandPieces(plan, asked.seam, asked.cloth), (pieces) => ({ asked, plan, pieces })),
  );
}
