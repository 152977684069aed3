import type { EdgeWidths } from '../sewing/pieces/piece-edges.ts';
import type { Ask, Condition } from './field-spec.ts';

/**
 * What there is to have at hand, and how it is reckoned: pieces laid on cloth, so much by length,
 * or so many.
 */
export const MATERIALS = {
  cloth: 'laid',
  interfacing: 'laid',
  strip: 'length',
  bias: 'length',
  lace: 'length',
  tape: 'length',
  thread: 'length',
  closure: 'count',
  other: 'count',
} as const satisfies Readonly<Record<string, 'laid' | 'length' | 'count'>>;

export type MaterialKind = keyof typeof MATERIALS;
/** How much of a material is reckoned. */
export type MaterialForm = (typeof MATERIALS)[MaterialKind];

/** An output that says how large a piece is: a length. */
interface Size {
  key: string;
  kind: string;
}

/**
 * What a work takes to be made. It stands at an output that adds up over sides: how long, or how
 * many; of pieces how many, with the outputs that say how large each is.
 */
export interface MaterialTaken {
  kind: MaterialKind;
  /** How long a piece is along the grain, where the output itself is how many. */
  along?: Size;
  /** How wide it is across the grain, or a strip is. */
  across?: Size;
  /** One side of it lies on the fold; `across` is of the whole. */
  fold?: Condition;
  /** The output is how wide a strip is. It is as long as its edge: `along`, where the work is given that. */
  edge?: true;
  /** What each edge of a piece takes, from what was read of the fields that `along` reads. */
  edges?: (fields: Readonly<Record<string, unknown>>) => EdgeWidths;
  /** Where this holds nothing is taken: it is there already. */
  unless?: Condition;
  /** It is taken also where the output isn't asked for: then how much isn't known. */
  always?: true;
  /** Of thread: how many are fed at once, each from a spool of its own; one where it isn't said. */
  fed?: (ask: Ask) => number;
}
