import { mm } from '../../lengths/length.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { type NeedleMatch, needleFromMetric, needleFromUs } from '../../sewing/seams/needles.ts';
import {
  type Stitch,
  stitchFromLength,
  stitchFromPerCm,
  stitchFromPerInch,
} from '../../sewing/seams/stitches.ts';
import type { Sizes } from './fields.ts';

/** Beyond any stitch, and still a length. */
const FAR_MM = 1e6;

/** A stitch from its millimetres, or from stitches to the inch or to the centimetre. */
export function stitchOf(given: number, by: Sizes['stitchBy']): Outcome<Stitch> {
  if (by === 'in') return stitchFromPerInch(given);
  if (by === 'cm') return stitchFromPerCm(given);
  return stitchFromLength(mm(Math.max(-FAR_MM, Math.min(given, FAR_MM))));
}

/** A needle from either of its sizes. */
export function needleOf(given: number, by: Sizes['needleBy']): Outcome<NeedleMatch> {
  return by === 'us' ? needleFromUs(given) : needleFromMetric(given);
}

/** What is wrong with a size is wrong with the number of its kind. */
export function ofKind<Value>(what: Sizes['what'], outcome: Outcome<Value>): Outcome<Value> {
  if (outcome.ok) return outcome;
  const [first, ...more] = outcome.problems;
  const named = <One extends typeof first>(one: One) => ({ ...one, field: what });
  return { ok: false, problems: [named(first), ...more.map(named)] };
}
