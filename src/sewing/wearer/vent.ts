import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { leastSlit, type SlitLevel } from './least-slit.ts';

/** A garment over the hips, from its top edge to its hem; girths all round, in 1/8000 mm. */
export interface VentInput {
  hip: Length;
  ease: Length;
  /** The garment round at the hip, and at the hem. */
  seat: Length;
  hem: Length;
  /** From the top edge down to the hip, and to the hem. */
  down: Length;
  long: Length;
  /** Round both legs at the hem with a step taken, where that is more than the hip. */
  stride?: Length | undefined;
  /** At the top edge: the body, and the garment; both or neither. */
  bodyTop?: Length | undefined;
  top?: Length | undefined;
}

export interface Room {
  /** What has to pass at the hip: hip + ease. */
  needs: ExactLength;
  /** Ease that there is at the hip; less than nothing where it is narrower than the body. */
  ease: ExactLength;
  /** What is missing there; less than nothing is to spare. */
  lacks: ExactLength;
}

/** A vent: how long it has to be, and where it begins. */
export interface Vent {
  vent: ExactLength;
  /** From the top edge down. */
  begins: ExactLength;
  by: 'closed' | 'edges' | 'width';
}

/** Room at the hip. Problems: a girth of nothing, ease below nothing. */
export function roomAtHip({
  hip,
  ease,
  seat,
}: Pick<VentInput, 'hip' | 'ease' | 'seat'>): Outcome<Room> {
  const problems = [
    ...mustBePositive('hip', hip),
    ...mustNotBeNegative('ease', ease),
    ...mustBePositive('seat', seat),
  ];
  return answerUnless(problems, () => {
    const needs = exactLength(hip + ease);
    const there = exactLength(seat - hip);
    return { ok: true, value: { needs, ease: there, lacks: exactLength(needs - seat) } };
  });
}

/**
 * The least vent from the hem up: it begins where the garment is wide enough for what passes there. From the
 * hip down that is hip + ease, or straight from there to what a step needs at the hem, which is on the safe
 * side; above the hip, where both are known, the body goes straight, which is not: it may be fuller
 * (`least-slit.ts`, derived here).
 *
 * Problems: those of the room at the hip, a hem that isn't below the hip, a garment too narrow where it is
 * known last (at the hip, or at the top edge), a vent longer than the garment.
 */
export function ventFrom(input: VentInput): Outcome<Vent> {
  const room = roomAtHip(input);
  const problems = [...(room.ok ? [] : room.problems), ...ventProblems(input)];
  return answerUnless(problems, () => {
    const { hip, ease, seat, long } = input;
    const needs = exactLength(hip + ease);
    const { slit, by } = leastSlit(levelsOf(input, needs));
    if (slit !== undefined && slit > long) {
      return refused({ kind: 'too-short', field: 'long', least: slit, given: long });
    }
    if (by !== 'never') {
      return { ok: true, value: { vent: slit, begins: exactLength(long - slit), by } };
    }
    const { top, bodyTop } = input;
    if (top === undefined || bodyTop === undefined) {
      return refused({ kind: 'does-not-fit', field: 'seat', room: seat, needed: needs });
    }
    const needed = exactLength(bodyTop + ease);
    return refused({ kind: 'does-not-fit', field: 'top', room: top, needed });
  });
}

/** From the hem up. */
function levelsOf(input: VentInput, needs: ExactLength): SlitLevel[] {
  const { ease, seat, hem, down, long, stride = ZERO, top, bodyTop } = input;
  const levels: SlitLevel[] = [
    { from: ZERO, garment: hem, needs: exactLength(Math.max(needs, stride)) },
    { from: exactLength(long - down), garment: seat, needs },
  ];
  if (top === undefined || bodyTop === undefined) return levels;
  return [...levels, { from: long, garment: top, needs: exactLength(bodyTop + ease) }];
}

function ventProblems({ hem, down, long, stride, top, bodyTop }: VentInput): Problem[] {
  const alone = [
    ...mustBePositive('hem', hem),
    ...mustBePositive('down', down),
    ...mustBePositive('long', long),
    ...mustBePositiveIfGiven('stride', stride),
    ...mustBePositiveIfGiven('top', top),
    ...mustBePositiveIfGiven('bodyTop', bodyTop),
  ];
  if (alone.length > 0 || long > down) return alone;
  return [{ kind: 'not-over', field: 'long', over: down, given: long }];
}
