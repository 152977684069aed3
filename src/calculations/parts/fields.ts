import { partsWords as words } from '#words/parts-words.ts';
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

type Input = InputOf<(typeof partsFields)['specs']>;

const PARTS = { quarters: 4, halves: 2, eighths: 8 } as const;

/** What is divided, and into how many. */
export function partsInput(read: Input): PartsInput {
  const { length, other, round } = read;
  return { length, parts: partsOf(read), round: round === 'closed', other };
}

function partsOf(read: Input): number {
  return read.into === 'other' ? needed({ count: read.count }).count : PARTS[read.into];
}
