import { partsWords as words } from '#words/calculations/parts-words.ts';
import {
  all,
  choice,
  count,
  given,
  length,
  lengthOrNone,
  maybeLength,
  not,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { maybeRun } from '../../calculation/run-field.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { PartsInput } from '../../sewing/equal-parts.ts';

const follow = maybeRun(words.none);
/** Marks that follow others have their places from there. */
export const alone = not(given(follow));
const into = choice(words.into, { when: alone });

/** What is asked of an edge to divide. */
export const partsFields = schema(words.labels, {
  length: length({ start: { cm: '72', mm: '720', in: '28' }, usual: 'around' }),
  other: maybeLength(words.notGiven, { usual: 'around' }),
  into,
  count: count({ start: '6', usual: 'closures', when: all(alone, into.is('other')) }),
  round: choice(words.round, { start: 'closed', when: alone }),
  follow,
  offset: lengthOrNone(words.samePlaces, { when: given(follow) }),
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

/** What its marks are placed by: evenly, or where others are. */
export const MARKED = [
  ...DIVIDED,
  'follow',
  'offset',
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
