import { needed } from '../../calculation/needed.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { type Grain, liftOf, offGrain } from '../../sewing/cloth/grain.ts';
import { type Arc, arcOf, type Squared, slantedEdge, squared } from '../../sewing/pieces/curve.ts';
import { type Walk, walkedCurve } from '../../sewing/pieces/walked.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import {
  arcInput,
  type CurveAsked,
  type GRAIN_FIELDS,
  grainInput,
  type SQUARE_FIELDS,
  slantInput,
  squareInput,
  walkInput,
} from './fields.ts';

/** A curve, a slant or a cut end as it was worked out. */
export type Worked = { asked: CurveAsked } & (
  | { kind: 'arc'; arc: Arc }
  | { kind: 'walk'; walk: Walk }
  | { kind: 'slant'; edge: ExactLength }
  | { kind: 'square'; square: Squared }
  | { kind: 'grain'; grain: Grain; lift: ExactLength }
);

/** The cut end that is asked for. */
export function squareOf(
  asked: Pick<CurveAsked, (typeof SQUARE_FIELDS)[number]>,
): Outcome<Squared> {
  const { long, one, other } = squareInput(asked);
  return squared(long, one, other);
}

/** How far the cloth is off its grain, and what that comes to at an edge. */
export function grainOf(
  asked: Pick<CurveAsked, (typeof GRAIN_FIELDS)[number] | 'over'>,
): Outcome<{ grain: Grain; lift: ExactLength }> {
  const input = grainInput(asked);
  const lift = liftOf(input, needed({ over: asked.over }).over);
  if (!lift.ok) return lift;
  return mapped(offGrain(input), (grain) => ({ grain, lift: lift.value }));
}

/** All that is asked, or every reason why not. */
export function curveWorked(asked: CurveAsked): Outcome<Worked> {
  const { kind } = asked;
  switch (kind) {
    case 'arc':
      return mapped(arcOf(arcInput(asked)), (arc) => ({ asked, kind, arc }));
    case 'walk':
      return mapped(walkedCurve(walkInput(asked)), (walk) => ({ asked, kind, walk }));
    case 'slant': {
      const { high, aside } = slantInput(asked);
      return mapped(slantedEdge(high, aside), (edge) => ({ asked, kind, edge }));
    }
    case 'square':
      return mapped(squareOf(asked), (square) => ({ asked, kind, square }));
    case 'grain':
      return mapped(grainOf(asked), (found) => ({ asked, kind, ...found }));
  }
}
