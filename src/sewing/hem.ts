import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { foldOf, type HemInput, hemProblems } from './hem-input.ts';
import { answerUnless, type Outcome } from './problem.ts';
import type { Run } from './run.ts';
import { HEM_CLASSES } from './sources/hems.ts';

/** A hem, with its lines measured from the raw edge of the flat cloth. */
export interface Hem {
  /** From the raw edge to the hem line: depth, first turning, and what the folds take. */
  allowance: ExactLength;
  /** What the cloth's thickness takes in the folds, part of the allowance. */
  takenByFolds: ExactLength;
  /** First press line, where there is a first turning. */
  firstPress: ExactLength | undefined;
  /** The last press line: the hem line itself. */
  hemLine: ExactLength;
  /** Up from the finished edge to the stitching. */
  stitchUp: ExactLength;
  /**
   * Chalk lines to fold to: twice the turning from the raw edge, twice the depth from
   * the first fold, and what the folds take.
   */
  foldTo: { first: ExactLength | undefined; second: ExactLength };
  cutLength: ExactLength | undefined;
  run: Run;
}

/**
 * The allowance and the lines of a hem.
 *
 * Allowance = depth + first turning. A fold of cloth τ thick takes about (π/2)·τ
 * more, half of it on each side of its press line (derived here: a half circle
 * along the middle of the cloth).
 *
 * Source of folding to a line at twice the turn, and of the sum: US Army FM 10-16,
 * General Fabric Repair, fig. 8-3.
 *
 * Problems: a depth of nothing, anything below nothing, a turning deeper than the
 * hem, stitching beyond the hem's depth, a hem longer than its piece, one that
 * needs more cloth than there is.
 */
export function hem(input: HemInput): Outcome<Hem> {
  return answerUnless(hemProblems(input), () => {
    const { depth, turn, thickness, edgeStitch, finished } = input;
    const fold = foldOf(thickness);
    const turned = turn > 0;
    const takenByFolds = exactLength(fold * (turned ? 2 : 1));
    const allowance = exactLength(depth + turn + takenByFolds);
    const firstPress = turned ? exactLength(turn + fold / 2) : undefined;
    const hemLine = exactLength(allowance - fold / 2);
    const stitchUp = exactLength(depth - edgeStitch);
    return {
      ok: true,
      value: {
        allowance,
        takenByFolds,
        firstPress,
        hemLine,
        stitchUp,
        foldTo: {
          // A fold lies midway between the edge laid down and the line it is laid on.
          first: firstPress === undefined ? undefined : exactLength(2 * firstPress),
          second: exactLength(2 * (hemLine - (firstPress ?? 0))),
        },
        cutLength: finished === undefined ? undefined : exactLength(finished + allowance),
        run: hemRun(firstPress, hemLine, exactLength(hemLine + stitchUp)),
      },
    };
  });
}

/** The lines as marks from the raw edge, on the flat cloth. */
function hemRun(
  firstPress: ExactLength | undefined,
  hemLine: ExactLength,
  stitch: ExactLength,
): Run {
  const first =
    firstPress === undefined ? [] : [{ at: firstPress, label: '1', kind: 'press' } as const];
  return {
    datum: 'raw-edge',
    length: Math.ceil(stitch) as Length,
    marks: [
      ...first,
      { at: hemLine, label: String(first.length + 1), kind: 'press' },
      { at: stitch, label: String(first.length + 2), kind: 'stitch' },
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
