import type { Ask, Condition } from '../../calculation/field-spec.ts';
import { fewerOf } from '../../sewing/matching-input.ts';
import { matchFields } from './fields.ts';

const { here, other } = matchFields.specs;
export type Edge = typeof here;

/** The output of what is eased in all where lengths don't pair. */
export const UNPAIRED = 'ease-unpaired';

/** What is typed of an edge, length by length. */
function typed(ask: Ask, edge: Edge): string[] {
  return ask(edge)
    .split(';')
    .filter((one) => one.trim() !== '');
}

/** Whether an edge is given in so many lengths at least. */
export const has =
  (edge: Edge, lengths: number): Condition =>
  (ask) =>
    typed(ask, edge).length >= lengths;

/** The edge with fewer lengths, where they don't pair. */
export function fewer(ask: Ask): ReturnType<typeof fewerOf> {
  return fewerOf({ here: typed(ask, here), other: typed(ask, other) });
}
