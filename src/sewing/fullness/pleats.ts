import { type ExactLength, exactLength, type Length, length } from '../../lengths/length.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Run } from '../run.ts';
import {
  depthsTaken,
  MOST_PLEATS,
  type PleatsInput,
  pleatedWidth,
  pleatProblems,
} from './pleat-input.ts';
import { marksAcross } from './pleat-marks.ts';

/** A width laid in so many pleats. */
export interface Pleating {
  count: number;
  /** From one pleat to the next, so that they fill the width: corrected, where another was wanted. */
  width: ExactLength;
  /** The strip from seam to seam. */
  strip: Length;
  /** The same with the seams at both ends: what is cut. */
  cut: Length;
}

export interface Pleats extends Pleating {
  /** Cloth that one pleat takes up. */
  takeUp: Length;
  /** Across the front of a box pleat, and from one to the next; undefined of the others. */
  box: { face: Length; between: ExactLength } | undefined;
  /** Whether folds lie over each other behind: bulk to press. */
  overlap: boolean;
  /** Of knife pleats, the most layers lying over each other anywhere. */
  layers: number | undefined;
  /** How far the first fold of knife pleats reaches past the seam, under what lies there; undefined where it doesn't. */
  past: ExactLength | undefined;
  /** One pleat fewer and one more, where there can be. */
  beside: readonly Pleating[];
  /** The fold and placement lines from the cut end of the strip, in order. */
  run: Run;
}

/**
 * Pleats over a finished width P, of which F stays flat: n is the whole number nearest to (P − F) ÷
 * width wanted, halfway the fewer; each is then (P − F) ÷ n wide; the strip is P + n × what one takes
 * up, which is 2 depths of a knife pleat and 4 of a box or inverted one (`sources/pleats.ts`).
 *
 * Layers of knife pleats: 1 + 2 × ⌈depth ÷ width⌉ at the most (derived here).
 *
 * Problems: a width, depth or count of nothing, a seam or flat part of less, nothing but a flat
 * part, more than 300 pleats, a box wider than the room of one pleat.
 */
export function pleats(input: PleatsInput): Outcome<Pleats> {
  return answerUnless(pleatProblems(input), () => {
    const { kind, depth } = input;
    const count = countOf(input);
    const tooWide = boxProblem(input, count);
    if (tooWide) return refused(tooWide);
    const face = faceOf(input);
    const pleating = laid(input, count);
    // In whole units, so that just touching is not overlapping.
    const reach = { knife: depth * count, box: 0, inverted: 2 * depth * count }[kind];
    const over = pleatedWidth(input);
    return {
      ok: true,
      value: {
        ...pleating,
        takeUp: takeUpOf(input),
        box: kind === 'box' ? { face, between: exactLength(pleating.width - face) } : undefined,
        overlap: kind === 'box' ? 2 * depth > face : reach > over,
        layers: kind === 'knife' ? 1 + 2 * Math.ceil(reach / over) : undefined,
        past: kind === 'knife' ? pastSeam(input, count) : undefined,
        beside: [count - 1, count + 1]
          .filter((n) => n >= 1 && n <= MOST_PLEATS && !boxProblem(input, n))
          .map((n) => laid(input, n)),
        run: {
          datum: 'cut-end',
          length: pleating.cut,
          marks: marksAcross({ ...input, face, count }),
        },
      },
    };
  });
}

/**
 * What the pleated strip comes to across, where it was cut at another length and its pleats are as
 * planned: P = strip − n × what one takes up. Problems name the depth.
 *
 * @param cut as it was measured, with both seams
 */
export function cameOut(cut: ExactLength, input: PleatsInput): Outcome<ExactLength> {
  const planned = pleats(input);
  if (!planned.ok) return planned;
  // A flat part has nothing to give.
  const needed = length(planned.value.count * planned.value.takeUp + input.flat);
  const room = exactLength(cut - 2 * input.seam);
  if (room <= needed) return refused({ kind: 'does-not-fit', field: 'depth', room, needed });
  return { ok: true, value: exactLength(room - needed + input.flat) };
}

/** The first fold lies one width from the seam, or half of one: whole units, so that just reaching isn't past. */
function pastSeam(input: PleatsInput, count: number): ExactLength | undefined {
  const past = 2 * count * input.depth - (input.ends === 'half' ? 1 : 2) * pleatedWidth(input);
  return past > 0 ? exactLength(past / (2 * count)) : undefined;
}

function countOf(input: PleatsInput): number {
  const { rule } = input;
  if (rule.by === 'count') return rule.count;
  const over = pleatedWidth(input);
  // Both are whole: a quotient of whole numbers is whole only where it is.
  const fewer = Math.floor(over / rule.width);
  const more = 2 * (over - fewer * rule.width) > rule.width ? 1 : 0;
  return Math.max(1, Math.min(MOST_PLEATS, fewer + more));
}

function laid(input: PleatsInput, count: number): Pleating {
  const { finished, seam } = input;
  const strip = length(finished + count * takeUpOf(input));
  const width = exactLength(pleatedWidth(input) / count);
  return { count, width, strip, cut: length(strip + 2 * seam) };
}

function takeUpOf({ kind, depth }: Pick<PleatsInput, 'kind' | 'depth'>): Length {
  return length(depth * depthsTaken(kind).value);
}

function faceOf({ face, depth }: PleatsInput): Length {
  return face ?? length(2 * depth);
}

/** A box wider than the room each has; the depth is named where the front follows from it. */
function boxProblem(input: PleatsInput, count: number): Problem | undefined {
  const { kind, depth, face } = input;
  const over = pleatedWidth(input);
  if (kind !== 'box' || faceOf(input) * count <= over) return undefined;
  const room = exactLength(over / count);
  return face === undefined
    ? { kind: 'too-long', field: 'depth', most: exactLength(room / 2), given: depth }
    : { kind: 'too-long', field: 'face', most: room, given: face };
}
