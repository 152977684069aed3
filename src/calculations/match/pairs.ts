import type { Ask, Condition } from '../../calculation/field-spec.ts';
import { fewerOf } from '../../sewing/pieces/matching-pairs.ts';
import { matchFields } from './fields.ts';
import { parted } from './parted.ts';

const { here, other, alone } = matchFields.specs;
export type Edge = typeof here;

/** The output of what is eased in all where lengths don't pair. */
export const UNPAIRED = 'ease-unpaired';

const typed = (ask: Ask, edge: Edge) => parted(ask(edge));

/** Whether an edge is given in so many lengths at least. */
export const has =
  (edge: Edge, lengths: number): Condition =>
  (ask) =>
    typed(ask, edge).length >= lengths;

/** The same of the edge that is eased on; whole, it is notched in as many as the other needs. */
export const meets =
  (lengths: number): Condition =>
  (ask) =>
    has(other, lengths)(ask) || typed(ask, other).length === 1;

/** The edge with fewer lengths, where they don't pair and it isn't said which notches meet none. */
export function fewer(ask: Ask): ReturnType<typeof fewerOf> {
  return saysAlone(ask) ? undefined : fewerLengths(ask);
}

/** Whether one edge has more lengths than the other, which is not whole. */
export const isUneven: Condition = (ask) => fewerLengths(ask) !== undefined;

/** Whether it is said which notches meet none. */
export const saysAlone: Condition = (ask) => ask(alone).trim() !== '';

function fewerLengths(ask: Ask): ReturnType<typeof fewerOf> {
  return fewerOf({ here: typed(ask, here), other: typed(ask, other) });
}
