import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { type CircleInput, circleProblems, LEAST_TIMES, MOST_PIECES } from './circle-input.ts';
import { type Sector, type SectorBox, sectorBox, sectorOf } from './sector.ts';

/** Circular pieces: their stitch lines, where they are cut, and the cloth one takes. */
export interface Circle {
  /** One piece at its stitch lines: edge and hem, and the angle between its sides. */
  piece: Sector;
  pieces: number;
  /** Where both arcs are cut. */
  cutRadius: ExactLength;
  cutHem: ExactLength;
  /** All round: the edge, the line where it is cut, the hem. */
  edge: ExactLength;
  cutEdge: ExactLength;
  hemLine: ExactLength;
  /** What side seams take of every arc, in all: of rings that are slit. */
  lost: ExactLength;
  /** One piece as it is cut. */
  box: SectorBox;
}

/**
 * Pieces between two arcs, by one law (`sector.ts`):
 *
 * - a skirt of f circles round an edge W: r = W ÷ 2πf, over p panels an angle of 2πf ÷ p each;
 * - a flounce on an edge E, of k rings slit once: r = (E ÷ k + 2s) ÷ 2π, as s is lost at both sides of a
 *   slit; k is ⌈E ÷ (2πr − 2s)⌉ for the radius r asked, or for depth ÷ (q − 1), where it is q times as full;
 * - gores, n of them: arcs of W ÷ n and hem ÷ n, a depth apart.
 *
 * The edge is cut at r − a, the hem at r + L + its allowance (derived here).
 *
 * Problems: a length of nothing, a fullness not over 1, a hem no longer than its edge, a seam that eats
 * the hole, an angle past a whole turn (more panels), a piece wider than the cloth, and how many would go on it.
 */
export function circle(input: CircleInput): Outcome<Circle> {
  return answerUnless(circleProblems(input), () => {
    const shape = shapeOf(input);
    if ('kind' in shape) return refused(shape);
    const wrong = shapeProblem(input, shape);
    if (wrong) return refused(wrong);
    const found = cutOf(input, shape);
    const { cloth } = input;
    return cloth !== undefined && shortWay(found) > cloth
      ? refused(
          { kind: 'too-short', field: 'cloth', least: shortWay(found), given: cloth },
          ...narrower(input, cloth),
        )
      : { ok: true, value: found };
  });
}

/** A piece across, laid the way that is shorter. */
function shortWay({ box }: Circle): ExactLength {
  return exactLength(Math.min(box.wide, box.high));
}

/** So many pieces that one goes on the cloth, where more of them do. */
function narrower({ kind, ...input }: CircleInput, cloth: Length): Problem[] {
  if (kind.of === 'flounce') return [];
  const given = kind.of === 'gores' ? kind.count : kind.panels;
  for (let least = given + 1; least <= MOST_PIECES; least += 1) {
    const more = { ...kind, [kind.of === 'gores' ? 'count' : 'panels']: least };
    const divided = { ...input, kind: more };
    const shape = shapeOf(divided);
    if (!('kind' in shape) && shortWay(cutOf(divided, shape)) <= cloth) {
      const field = kind.of === 'gores' ? 'gores' : 'panels';
      return [{ kind: 'too-few', field, least, most: MOST_PIECES, given }];
    }
  }
  return [];
}

/** Pieces on a cloth, each as the rectangle it takes. */
export interface InWidth {
  /** Side by side, and rows of them. */
  side: number;
  rows: number;
  long: ExactLength;
  /** Laid across the grain: as they are meant they are wider than the cloth. */
  turned: boolean;
}

/**
 * How many pieces lie side by side in the width of a cloth, and how much of it all of them take, each as the
 * rectangle round it (derived here). Fitted into each other they take no more.
 *
 * @param cloth at least as wide as a piece the shorter way
 */
export function inWidth({ box, pieces }: Circle, cloth: Length): InWidth {
  const turned = box.wide > cloth;
  const [across, along] = turned ? [box.high, box.wide] : [box.wide, box.high];
  const side = Math.max(1, Math.min(pieces, Math.floor(cloth / across)));
  const rows = Math.ceil(pieces / side);
  return { side, rows, long: exactLength(rows * along), turned };
}

/** How much longer the edge gets where its radius is too long by an error: angle × error, all round. */
export function edgeError({ piece, pieces }: Circle, error: ExactLength): ExactLength {
  return exactLength(piece.angle * pieces * error);
}

/** The edge that comes of a radius it was cut at; the hem line likewise. */
export function roundOf({ piece, pieces, lost }: Circle, radius: ExactLength): ExactLength {
  return exactLength(piece.angle * pieces * radius - lost);
}

type Shape = Pick<Circle, 'piece' | 'pieces' | 'lost'>;
const NOTHING = exactLength(0);

function shapeOf(input: CircleInput): Shape | Problem {
  const { edge, long, kind } = input;
  if (kind.of === 'flounce') return flounceOf(input, kind);
  if (kind.of === 'gores') {
    const arcs = {
      inner: exactLength(edge / kind.count),
      outer: exactLength(kind.hem / kind.count),
    };
    return { piece: sectorOf(arcs, long), pieces: kind.count, lost: NOTHING };
  }
  const radius = exactLength(edge / (2 * Math.PI * kind.circles));
  const piece = {
    ...{ inner: radius, outer: exactLength(radius + long) },
    angle: (2 * Math.PI * kind.circles) / kind.panels,
  };
  return { piece, pieces: kind.panels, lost: NOTHING };
}

/** The most rings a flounce is joined of. */
const MOST_RINGS = 200;

function flounceOf(
  { edge, long, side }: CircleInput,
  kind: Extract<CircleInput['kind'], { of: 'flounce' }>,
): Shape | Problem {
  const asked = kind.by === 'radius' ? kind.radius : long / (kind.times - 1);
  const each = 2 * Math.PI * asked - 2 * side;
  // So many rings at the most, each with something left beside its slit.
  const least = (edge / MOST_RINGS + 2 * side) / (2 * Math.PI);
  if (asked < least) {
    if (kind.by === 'radius') {
      return { kind: 'too-short', field: 'radius', least: exactLength(least), given: kind.radius };
    }
    // In hundredths, as it is typed.
    const most = Math.floor(100 * (1 + long / least)) / 100;
    if (most < LEAST_TIMES) {
      const deep = exactLength(least * (LEAST_TIMES - 1));
      return { kind: 'too-short', field: 'long', least: deep, given: long };
    }
    const given = kind.times;
    return { kind: 'out-of-range', field: 'times', given, least: LEAST_TIMES, most };
  }
  // The tolerance is one unit: with π nothing is whole.
  const pieces = Math.max(1, Math.ceil((edge - 1) / each));
  const inner = exactLength((edge / pieces + 2 * side) / (2 * Math.PI));
  return {
    piece: { inner, outer: exactLength(inner + long), angle: 2 * Math.PI },
    pieces,
    lost: exactLength(2 * side * pieces),
  };
}

function shapeProblem(
  { seam, kind, edge, long }: CircleInput,
  { piece }: Shape,
): Problem | undefined {
  if (seam >= piece.inner) {
    return { kind: 'not-under', field: 'seam', under: piece.inner, given: seam };
  }
  if (piece.angle <= 2 * Math.PI + 1e-9) return undefined;
  const turns = piece.angle / (2 * Math.PI);
  const field = kind.of === 'gores' ? 'gores' : 'panels';
  const given = kind.of === 'gores' ? kind.count : kind.of === 'skirt' ? kind.panels : 1;
  const least = Math.ceil(given * turns - 1e-9);
  if (kind.of === 'gores' && least > MOST_PIECES) {
    const most = exactLength(edge + MOST_PIECES * 2 * Math.PI * long);
    return { kind: 'too-long', field: 'sweep', most, given: kind.hem };
  }
  return { kind: 'too-few', field, least, most: MOST_PIECES, given };
}

function cutOf({ seam, side, hem }: CircleInput, shape: Shape): Circle {
  const { piece, pieces, lost } = shape;
  const round = (radius: number) => exactLength(piece.angle * pieces * radius - lost);
  const cutRadius = exactLength(piece.inner - seam);
  const cutHem = exactLength(piece.outer + hem);
  const whole = piece.angle > 2 * Math.PI - 1e-9;
  const cut = { inner: cutRadius, outer: cutHem, angle: piece.angle };
  return {
    ...shape,
    ...{ cutRadius, cutHem },
    edge: round(piece.inner),
    cutEdge: round(cutRadius),
    hemLine: round(piece.outer),
    box: sectorBox(cut, whole ? NOTHING : side),
  };
}
