import type { ExactLength } from '../../lengths/length.ts';
import { type ButtonholeInput, buttonhole } from '../../sewing/closures/buttonhole.ts';
import { buttonholeRow } from '../../sewing/closures/buttonhole-row.ts';
import { placesOf } from '../../sewing/followed-places.ts';
import type { Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import type { ButtonholeAsked } from './fields.ts';

/** The button and its hole that are asked for. */
export function buttonholeInput({
  holeRule: rule,
  holeWay: direction,
  diameter,
  thickness,
  girth,
}: Omit<ButtonholeAsked, 'follow' | 'offset'>): ButtonholeInput {
  return { diameter, thickness, girth, rule, direction };
}

/** The places of the row it follows, each so much further on; undefined where it follows none. */
export function placesAsked({
  follow,
  offset,
}: Pick<ButtonholeAsked, 'follow' | 'offset'>): readonly ExactLength[] | undefined {
  return follow && placesOf(follow, offset);
}

/** Every buttonhole of the row. */
export function rowOf(asked: ButtonholeAsked, places: readonly ExactLength[]): Outcome<Run> {
  const input = buttonholeInput(asked);
  const hole = buttonhole(input);
  return hole.ok ? buttonholeRow(hole.value, input.direction, places) : hole;
}
