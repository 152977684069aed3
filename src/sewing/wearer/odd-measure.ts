import { type ExactLength, exactLength, mm } from '../../lengths/length.ts';
import { type BodyMeasureId, isBodyMeasure } from '../sources/body-measures.ts';
import { GROWN_UPS, type Relation, type Spread } from '../sources/people.ts';

/** A measure that few grown-ups have: by itself, or beside another that was taken. */
export interface OddMeasure {
  past: 'least' | 'most';
  /** The end of what is usual, in 1/8000 mm. */
  end: ExactLength;
  /** The other measure it is held against. */
  beside?: BodyMeasureId;
  /** The survey took one of them a little otherwise. */
  alike: boolean;
}

/** Measures of one wearer that were taken: several of one where left and right were. */
export type TakenMeasures = ReadonlyMap<string, readonly number[]>;

type Ends = readonly [least: number, most: number];

/**
 * What is to be asked about a measure: the first relation to another one that it breaks, since a slip
 * of the pen breaks a relation first, else its own range, of women and men together: nobody is asked
 * which. No measure of a body is nothing, or less: that is asked about first, with an end of 0.
 * Undefined where it is usual, or nothing is published. Never a reason to refuse it.
 *
 * @param value in 1/8000 mm
 */
export function oddMeasure(
  id: string,
  value: number,
  others: TakenMeasures,
): OddMeasure | undefined {
  if (!isBodyMeasure(id)) return undefined;
  if (value <= 0) return { past: 'least', end: exactLength(0), alike: false };
  const { spreads, relations } = GROWN_UPS.value;
  for (const relation of relations) {
    const beside = otherOf(relation, id);
    for (const other of beside ? (others.get(beside) ?? []) : []) {
      const odd = other > 0 && outside(value, besideIt(relation, id, other));
      if (odd) return { ...odd, beside: beside as BodyMeasureId, alike: relation.alike === true };
    }
  }
  const spread = spreads[id];
  const odd = spread && outside(value, inUnits(endsOf(spread)));
  return odd && { ...odd, alike: spread.alike === true };
}

function otherOf({ of, to }: Relation, id: BodyMeasureId): BodyMeasureId | undefined {
  if (of === id) return to;
  return to === id ? of : undefined;
}

/** Where a measure lies if the other one is as it was taken. */
function besideIt(relation: Relation, id: BodyMeasureId, other: number): Ends {
  const ends = endsOf(relation);
  if (relation.as === 'by') {
    const [least, most] = ends;
    return relation.of === id ? [other * least, other * most] : [other / most, other / least];
  }
  const [least, most] = inUnits(ends);
  return relation.of === id ? [other + least, other + most] : [other - most, other - least];
}

/** From the least of women and men to the most. */
function endsOf({ women, men }: Spread): Ends {
  const all = [...(women ?? []), ...(men ?? [])];
  return [Math.min(...all), Math.max(...all)];
}

function inUnits([least, most]: Ends): Ends {
  return [mm(10 * least), mm(10 * most)];
}

function outside(value: number, [least, most]: Ends): Pick<OddMeasure, 'past' | 'end'> | undefined {
  if (value < least) return { past: 'least', end: exactLength(least) };
  return value > most ? { past: 'most', end: exactLength(most) } : undefined;
}
