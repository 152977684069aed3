import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';
import type { Run } from './run.ts';
import { HEM_CLASSES } from './sources/hems.ts';

/** A hem to be turned up. Every length in 1/8000 mm. */
export interface HemInput {
  /** Finished depth, from the hem line up. */
  depth: Length;
  /** The first turning; nothing for a single turn, as much as the depth for an equal double one. */
  turn: Length;
  /** Of the cloth, when it is to be reckoned with. */
  thickness: Length;
  /** From the inner fold (or the raw edge of a single turn) down to the stitching. */
  edgeStitch: Length;
  /** Finished length of the piece, when the cut length is wanted. */
  finished?: Length | undefined;
}

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
  /** Chalk lines to fold to: twice the turning from the raw edge, twice the depth from the first fold. */
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
 * hem, stitching beyond the hem's depth, a hem longer than its piece.
 */
export function hem(input: HemInput): Outcome<Hem> {
  return answerUnless(hemProblems(input), () => {
    const { depth, turn, thickness, edgeStitch, finished } = input;
    const fold = (Math.PI / 2) * thickness;
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
          first: turned ? exactLength(2 * turn) : undefined,
          second: exactLength(2 * depth),
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

function hemProblems(input: HemInput): Problem[] {
  const { depth, turn, thickness, edgeStitch, finished } = input;
  const alone = [
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('turn', turn),
    ...mustNotBeNegative('thickness', thickness),
    ...mustNotBeNegative('edgeStitch', edgeStitch),
    ...(finished === undefined ? [] : mustBePositive('finished', finished)),
  ];
  if (alone.length > 0) return alone;
  if (turn > depth) return [{ kind: 'too-long', field: 'turn', most: depth, given: turn }];
  if (edgeStitch >= depth) {
    return [{ kind: 'too-long', field: 'edgeStitch', most: depth, given: edgeStitch }];
  }
  return finished !== undefined && depth > finished
    ? [{ kind: 'too-long', field: 'depth', most: finished, given: depth }]
    : [];
}

export type HemClass = 'rolled' | 'narrow' | 'ordinary' | 'deep';

/** What a hem of a finished depth is called. Source: `HEM_CLASSES`. */
export function hemClass(depth: Length): HemClass {
  const { rolled, narrow, ordinary } = HEM_CLASSES.value;
  if (depth <= rolled) return 'rolled';
  if (depth <= narrow) return 'narrow';
  return depth <= ordinary ? 'ordinary' : 'deep';
}
