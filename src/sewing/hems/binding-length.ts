import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { joinTakes } from '../cloth/bias.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';

/** The edge that is bound, by its parts. Lengths in 1/8000 mm, along the raw edge. */
export interface BoundEdge {
  straight: readonly Length[];
  /** Curves outward, as at a bib, and inward, as at a neck: a radius for each length. */
  outLong: readonly Length[];
  outRadius: readonly Length[];
  inLong: readonly Length[];
  inRadius: readonly Length[];
  /** Corners in degrees, inside the piece: over 180 they go in. */
  corners: readonly number[];
  /** How far inside the edge the strip is sewn on; nothing of what is sewn along the edge itself. */
  inside: Length;
  /** Joined to a ring by a seam of this; undefined of an open edge. */
  join: Length | undefined;
  /** Turned in at each end of an open edge. */
  endTurn: Length;
}

export interface BindingLength {
  long: ExactLength;
  /** All straight parts, and all curves as they are cut. */
  straight: ExactLength;
  curves: ExactLength;
  /** What each corner takes, in a pleat or across it. */
  corners: readonly ExactLength[];
  ends: ExactLength;
  /** How much the fold has to stretch at the tightest curve outward, or the strip be eased on: a part of one. */
  stretch: number;
  /** How much the fold has to ease at the tightest curve inward. */
  ease: number;
}

/**
 * How long a binding is: of every part the longer of its edge and its stitch line, b inside it (derived
 * here). Outward the edge is, and its fold stretches b ÷ (R − b); inward the stitch line is, (R + b) ÷ R
 * times the edge, and the fold eases b ÷ (R + b). A corner of φ takes 2b × cot(φ ÷ 2), for the pleat of
 * its mitre; one that goes in as much of 360° − φ. A ring takes a join on the bias, 2√2 seams.
 *
 * Problems: lengths and radii of nothing, not a radius for each curve, a curve outward with no stitch
 * line, a corner that is none.
 */
export function bindingLength(edge: BoundEdge): Outcome<BindingLength> {
  return answerUnless(edgeProblems(edge), () => {
    const { straight, outLong, outRadius, inLong, inRadius, inside, join, endTurn } = edge;
    const sum = (all: readonly number[]) => all.reduce((so, one) => so + one, 0);
    const inward = inLong.map(
      (long, i) => (long * ((inRadius[i] ?? 1) + inside)) / (inRadius[i] ?? 1),
    );
    const corners = edge.corners.map((angle) => cornerTakes(angle, inside));
    const ends = join === undefined ? exactLength(2 * endTurn) : joinTakes(join);
    const curves = sum(outLong) + sum(inward);
    // Without a curve the tightest is endless, and nothing stretches or eases.
    const [tight, hollow] = [Math.min(...outRadius), Math.min(...inRadius)];
    return {
      ok: true,
      value: {
        long: settled(exactLength(sum(straight) + curves + sum(corners) + ends)),
        ...{ straight: exactLength(sum(straight)), curves: settled(exactLength(curves)) },
        ...{ corners, ends },
        stretch: inside / (tight - inside),
        ease: inside / (hollow + inside),
      },
    };
  });
}

/** What a corner takes: nothing where the edge goes straight on. */
export function cornerTakes(angle: number, inside: ExactLength): ExactLength {
  const half = (Math.min(angle, 360 - angle) * Math.PI) / 360;
  return settled(exactLength((2 * inside * Math.cos(half)) / Math.sin(half)));
}

function edgeProblems(edge: BoundEdge): Problem[] {
  const { corners, inside, join, endTurn } = edge;
  const lists = ['straight', 'outLong', 'outRadius', 'inLong', 'inRadius'] as const;
  const wrong = corners.find((angle) => angle < 1 || angle > 359);
  const alone = [
    ...lists.flatMap((field) =>
      edge[field].flatMap((one) => mustBePositive(field, one)).slice(0, 1),
    ),
    ...(wrong === undefined
      ? []
      : [{ kind: 'out-of-range', field: 'corners', given: wrong, least: 1, most: 359 } as const]),
    ...(join === undefined
      ? mustNotBeNegative('endTurn', endTurn)
      : mustNotBeNegative('join', join)),
    ...asMany(edge, 'outRadius', 'outLong'),
    ...asMany(edge, 'inRadius', 'inLong'),
  ];
  if (alone.length > 0) return alone;
  const tight = edge.outRadius.find((radius) => radius <= inside);
  return tight === undefined
    ? []
    : [{ kind: 'not-over', field: 'outRadius', over: inside, given: tight }];
}

function asMany(
  edge: BoundEdge,
  field: 'outRadius' | 'inRadius',
  of: 'outLong' | 'inLong',
): Problem[] {
  const [given, needed] = [edge[field].length, edge[of].length];
  return given === needed ? [] : [{ kind: 'not-as-many', field, given, needed }];
}
