import { type ExactLength, exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Mark, Run } from '../run.ts';
import { type Sector, sectorOf } from '../shaping/sector.ts';

export interface CollarInput {
  /** Stitch line of the neck, from front middle to shoulder and from shoulder to back middle. */
  front: Length;
  back: Length;
  /** Past the front middle, at each end. */
  past: Length;
  /** As it is sewn, from neck to outer edge; how much of it stands before it rolls over. */
  deep: Length;
  stand: Length;
  /** Round where its outer edge will lie; undefined where it is as long as the neck. */
  outer: Length | undefined;
  /** Of each layer; what isn't known is nothing. */
  upperThick: Length | undefined;
  underThick: Length | undefined;
  between: Length | undefined;
  /** How far it is rolled over, in degrees. */
  rolled: number;
  /** How far its seams are rolled to the under side. */
  under: Length;
  seam: Length;
}

/** One of the two pieces, as it is cut. */
export interface CollarPiece {
  long: Length;
  wide: ExactLength;
  /** Shoulders and back middle, along the neck edge. */
  run: Run;
}

export interface Collar {
  /** All round, on the stitch line. */
  neck: Length;
  upper: CollarPiece;
  under: CollarPiece;
  /** What the upper one is wider by, for the cloth it turns over; nothing where nothing rolls. */
  turn: ExactLength;
  /** What its outer edge is longer by, all round the neck. */
  around: ExactLength;
  /** How its stitch lines are curved: its neck edge in or out, undefined of a straight one. */
  curve: { sector: Sector; inside: 'neck' | 'outer' } | undefined;
}

/** The most it is rolled over, in degrees. */
const MOST_ROLLED = 180;

/**
 * A collar. Over its roll the middle of the upper cloth lies τᵤ ÷ 2 + τᵢ + τₗ ÷ 2 further out than that of
 * the under one, so that it needs that × the angle it rolls through more, π × for a half turn, whatever the
 * roll's gap; as much × 2π all round the neck. Seams rolled under by ε make the upper larger and the under
 * smaller by ε at each edge. Its curve is that of a piece between two arcs (derived here).
 *
 * Problems: lengths of nothing, less than nothing, a stand deeper than it, a roll of over half a turn, seams
 * rolled under by more than there is.
 */
export function collar(input: CollarInput): Outcome<Collar> {
  return answerUnless(collarProblems(input), () => {
    const { front, back, deep, outer, under } = input;
    const neck = length(2 * (front + back));
    const apart = layersApart(input);
    const rolls = input.stand > 0 && input.stand < deep;
    const turn = exactLength(rolls ? (apart * input.rolled * Math.PI) / 180 : 0);
    const value: Collar = {
      neck,
      turn,
      around: exactLength(rolls ? 2 * Math.PI * apart : 0),
      upper: piece(input, under, turn),
      under: piece(input, length(-under), exactLength(0)),
      curve: curveOf(neck, outer ?? neck, deep),
    };
    return { ok: true, value };
  });
}

/** From the middle of the under cloth to that of the upper one. */
export function layersApart(
  of: Pick<CollarInput, 'upperThick' | 'underThick' | 'between'>,
): ExactLength {
  const { upperThick = ZERO, underThick = ZERO, between = ZERO } = of;
  return exactLength(upperThick / 2 + between + underThick / 2);
}

function piece(input: CollarInput, larger: Length, turn: ExactLength): CollarPiece {
  const { front, back, past, deep, seam } = input;
  const long = length(2 * (front + back + past + larger + seam));
  const begins = seam + larger + past;
  const places = [front, front + back, front + 2 * back];
  const marks = places.map(
    (place, i): Mark => ({ at: exactLength(begins + place), label: String(i + 1), kind: 'notch' }),
  );
  const wide = exactLength(deep + turn + larger + 2 * seam);
  return { long, wide, run: { datum: 'cut-end', length: long, marks } };
}

function curveOf(neck: Length, outer: Length, deep: Length): Collar['curve'] {
  if (outer === neck) return undefined;
  return outer > neck
    ? { sector: sectorOf({ inner: neck, outer }, deep), inside: 'neck' }
    : { sector: sectorOf({ inner: outer, outer: neck }, deep), inside: 'outer' };
}

function collarProblems(input: CollarInput): Problem[] {
  const { deep, stand, rolled, under } = input;
  const alone = [
    ...mustBePositive('front', input.front),
    ...mustBePositive('back', input.back),
    ...mustNotBeNegative('past', input.past),
    ...mustBePositive('deep', deep),
    ...mustNotBeNegative('stand', stand),
    ...mustBePositiveIfGiven('outer', input.outer),
    ...mustBePositiveIfGiven('upperThick', input.upperThick),
    ...mustBePositiveIfGiven('underThick', input.underThick),
    ...mustBePositiveIfGiven('between', input.between),
    ...mustNotBeNegative('under', under),
    ...mustNotBeNegative('seam', input.seam),
  ];
  if (alone.length > 0) return alone;
  if (stand > deep) return [{ kind: 'too-long', field: 'stand', most: deep, given: stand }];
  if (under >= deep) return [{ kind: 'not-under', field: 'under', under: deep, given: under }];
  return rolled < 1 || rolled > MOST_ROLLED
    ? [{ kind: 'out-of-range', field: 'rolled', given: rolled, least: 1, most: MOST_ROLLED }]
    : [];
}
