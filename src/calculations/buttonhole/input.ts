import type { InputOf } from '../../calculation/schema.ts';
import type { ButtonholeInput } from '../../sewing/buttonhole.ts';
import type { buttonholeFields } from './fields.ts';

/** The button and its hole that are asked for. */
export function buttonholeInput({
  holeRule: rule,
  holeWay: direction,
  ...button
}: InputOf<(typeof buttonholeFields)['specs']>): ButtonholeInput {
  return { ...button, rule, direction };
}
