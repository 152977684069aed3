import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import type { Run } from '../run.ts';
import { HEM_CLASSES } from '../sources/hems.ts';
import { type Folds, foldsOf } from './hem-folds.ts';
import { cutLengthOf, type HemInput, hemProblems } from './hem-input.ts';

/** A hem, with its lines measured from the raw edge of the flat cloth. */
export interface Hem {
  /** What the piece is cut longer by: depth, first turning, and what the folds add. */
  allowance: ExactLength;
  /** What the cloth's thickness adds in each fold, part of the allowance. */
  folds: Folds;
  /** First press line, where there is a first turning. */
  firstPress: ExactLength | undefined;
  /** The last press line, in the middle of the last fold. */
  hemLine: ExactLength;
  /** Up from the finished edge to the stitching. */
  stitchUp: ExactLength;
  /**
   * Chalk lines to fold to: twice the first press line from the raw edge, and from the
   * outside of the first fold twice the depth with what the last fold adds.
   */
  foldTo: { first: ExactLength | undefined; second: ExactLength };
  /** Finished length, allowance, and what is added at the other end. */
  cutLength: ExactLength | undefined;
  run: Run;
}

/**
 * The allowance and the lines of a hem.
 *
 * Allowance = depth + first turning + what each fold adds (`hem-folds.ts`). A press
 * line is in the middle of its fold, so it moves by half of what that fold adds.
 *
 * Source of folding to a line at twice the turn, and of the sum: US Army FM 10-16,
 * General Fabric Repair, fig. 8-3.
 *
 * Problems: a depth of nothing, anything below nothing, a turning deeper than the
 * hem, stitching beyond the hem's depth or in the round of its fold, cloth too thick to be folded so, a hem longer
 * than its piece, one that needs more cloth than there is.
 */
export function hem(input: HemInput): Outcome<Hem> {
  return answerUnless(hemProblems(input), () => {
    const { depth, turn, edgeStitch, finished, otherEnd } = input;
    const folds = foldsOf(input);
    const allowance = exactLength(depth + turn + folds.first + folds.last);
    const firstPress = turn > 0 ? exactLength(turn + folds.first / 2) : undefined;
    const hemLine = exactLength(allowance - folds.last / 2);
    const stitchUp = exactLength(depth - edgeStitch);
    return {
      ok: true,
      value: {
        allowance,
        folds,
        firstPress,
        hemLine,
        stitchUp,
        foldTo: {
          // A fold lies midway between the edge laid down and the line it is laid on.
          first: firstPress === undefined ? undefined : exactLength(2 * firstPress),
          second: exactLength(2 * depth + folds.last),
        },
        cutLength: cutLengthOf(finished, allowance, otherEnd),
        run: hemRun(
          firstPress,
          hemLine,
          exactLength(allowance + stitchUp),
          exactLength(allowance + depth),
        ),
      },
    };
  });
}

/** The lines as marks from the raw edge, on the flat cloth. */
function hemRun(
  firstPress: ExactLength | undefined,
  hemLine: ExactLength,
  stitch: ExactLength,
  innerEdge: ExactLength,
): Run {
  const first =
    firstPress === undefined ? [] : [{ at: firstPress, label: '1', kind: 'press' } as const];
  return {
    datum: 'raw-edge',
    length: Math.ceil(stitch) as Length,
    marks: [
      ...first,
      { at: hemLine, label: String(first.length + 1), kind: 'press' },
      {
        at: stitch,
        label: String(first.length + 2),
        kind: 'stitch',
        inside: { over: hemLine, under: innerEdge },
      },
    ],
  };
}

export type HemClass = 'rolled' | 'narrow' | 'ordinary' | 'deep';

/** What a hem of a finished depth is called. Source: `HEM_CLASSES`. */
export function hemClass(depth: Length): HemClass {
  const { rolled, narrow, ordinary } = HEM_CLASSES.value;
  if (depth <= rolled) return 'rolled';
  if (depth <= narrow) return 'narrow';
  return depth <= ordinary ? 'ordinary' : 'deep';
}
