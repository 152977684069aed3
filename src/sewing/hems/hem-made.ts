import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { Hem } from './hem.ts';

/** Where presses of a hem were made, from the raw edge; undefined of one that isn't made. */
export interface Presses {
  firstPress?: ExactLength | undefined;
  hemLine?: ExactLength | undefined;
}

/** A hem of which some is pressed: what stands, and what is still to come by it. */
export type PressedHem = Pick<
  Hem,
  'allowance' | 'firstPress' | 'hemLine' | 'stitchUp' | 'foldTo'
> & {
  /** Finished, from the hem line up. */
  depth: ExactLength;
  /** Stitching, from the raw edge on the flat cloth. */
  stitch: ExactLength;
};

/**
 * A hem with its press lines where they were made. Every line is as far from the one
 * before as was planned, so that the hem comes out as deep as wanted; of a hem that takes
 * all there is, the hem line stays and the depth gives. The allowance is what the hem line
 * leaves. Derived here: a press line lies in the middle of its fold, pressed where planned
 * or elsewhere.
 *
 * @param depth as planned
 * @param keeps what is kept where the first press was made elsewhere
 */
export function hemAsPressed(
  hem: Hem,
  depth: Length,
  made: Presses,
  keeps: 'depth' | 'hem-line',
): PressedHem {
  const first =
    made.firstPress === undefined || hem.firstPress === undefined
      ? 0
      : made.firstPress - hem.firstPress;
  const follows = keeps === 'depth' ? first : 0;
  const line = made.hemLine === undefined ? follows : made.hemLine - hem.hemLine;
  const allowance = exactLength(hem.allowance + line);
  const stitchUp = exactLength(hem.stitchUp + line - first);
  return {
    allowance,
    firstPress: hem.firstPress,
    hemLine: exactLength(hem.hemLine + line),
    stitchUp,
    foldTo: {
      first: hem.foldTo.first,
      second: exactLength(hem.foldTo.second + 2 * (line - first)),
    },
    depth: exactLength(depth + line - first),
    stitch: exactLength(allowance + stitchUp),
  };
}
