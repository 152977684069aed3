import { partsWords as words } from '#words/calculations/parts-words.ts';
import { choice, count, length, maybeLength } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { PartsInput } from '../../sewing/equal-parts.ts';

const into = choice(words.into);

/** What is asked of an edge to divide. */
export const partsFields = schema(words.labels, {
  length: length({ start: { cm: '72', mm: '720', in: '28' }, usual: 'around' }),
  other: maybeLength(words.notGiven, { usual: 'around' }),
  into,
  count: count({ start: '6', usual: 'closures', when: into.is('other') }),
  round: choice(words.round, { start: 'closed' }),
});

/** What was read of the fields. */
export type PartsAsked = InputOf<(typeof partsFields)['specs']>;

/** What an edge is divided by: the other fields say what it meets. */
export const DIVIDED = [
  'length',
  'into',
  'count',
  'round',
] as const satisfies readonly (keyof PartsAsked)[];

const PARTS = { quarters: 4, halves: 2, eighths: 8 } as const;

/** What is divided, and into how many. */
export function partsInput({
  length,
  round,
  ...read
}: Pick<PartsAsked, (typeof DIVIDED)[number]>): PartsInput {
  return { length, parts: partsOf(read), round: round === 'closed' };
}

function partsOf({ into, count }: Pick<PartsAsked, 'into' | 'count'>): number {
  return into === 'other' ? needed({ count }).count : PARTS[into];
}
