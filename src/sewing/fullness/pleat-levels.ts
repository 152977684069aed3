import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeWithin } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';
import { depthsTaken, type PleatsInput, pleatedWidth } from './pleat-input.ts';
import { marksAcross } from './pleat-marks.ts';
import type { Pleats } from './pleats.ts';

/** Another level of the strip, as the hips are below a waist. */
export interface Level {
  /** The field it was given in. */
  field: string;
  /** From seam to seam there, when it is pleated. */
  across: Length;
}

/** The same pleats at another level. */
export interface LevelPleats {
  /** Of one fold there, measured once: nothing where they hang open. */
  depth: ExactLength;
  /** From one to the next there. */
  width: ExactLength;
  /** Whether folds lie over each other behind there. */
  overlap: boolean;
  /** The lines there, from the cut end. */
  run: Run;
}

/**
 * Pleats fitted to another width at another level: the strip is as wide there, and as many pleats
 * share what has to go, so that each takes (strip − across) ÷ n. Between two levels the lines are
 * straight.
 *
 * Reference: A Complete Course in Dressmaking, vol. 5, pages 64–69, where half of a skirt is fitted
 * to half of its waist, hips and hem.
 *
 * Problems name the level's field: more than the strip, no more than the flat part, less than the
 * fronts of the boxes.
 */
export function pleatsAtLevel(
  input: PleatsInput,
  { count, strip, cut }: Pick<Pleats, 'count' | 'strip' | 'cut'>,
  { field, across }: Level,
): Outcome<LevelPleats> {
  const { kind, flat, face } = input;
  const depths = depthsTaken(kind).value * count;
  return answerUnless(problemsAt(input, { count, strip }, { field, across }), () => {
    const depth = exactLength((strip - across) / depths);
    const there = { ...input, finished: across };
    const front = face ?? exactLength(2 * depth);
    const over = pleatedWidth(there);
    // In whole units: a depth is (strip − across) ÷ depths.
    const overlap = {
      knife: (strip - across) * count > over * depths,
      box: face !== undefined && 2 * (strip - across) > face * depths,
      inverted: 2 * (strip - across) * count > over * depths,
    }[kind];
    const marks = marksAcross({ ...there, depth, face: front, count });
    return {
      ok: true,
      value: {
        depth,
        width: exactLength((across - flat) / count),
        overlap,
        run: { datum: 'cut-end', length: cut, marks },
      },
    };
  });
}

function problemsAt(
  { kind, flat, face }: PleatsInput,
  { count, strip }: Pick<Pleats, 'count' | 'strip'>,
  { field, across }: Level,
): Problem[] {
  if (across <= flat) return [{ kind: 'not-over', field, over: flat, given: across }];
  if (kind !== 'box') {
    return across > strip ? [{ kind: 'too-long', field, most: strip, given: across }] : [];
  }
  // Fronts of their own, or twice the depth there: 2 × count × (strip − across) ÷ (4 × count).
  const least =
    face === undefined ? exactLength((strip + 2 * flat) / 3) : exactLength(face * count + flat);
  return mustBeWithin(field, across, least, strip);
}
