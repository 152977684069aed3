import { tiersWords as words } from '#words/calculations/tiers-words.ts';
import {
  choice,
  count,
  length,
  lengthOrNone,
  lengths,
  maybeLength,
  number,
  numbers,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { TierDepths, TiersInput } from '../../sewing/fullness/tiers.ts';

const by = choice(words.by);
const growing = by.is('growing');

/** What is asked of tiers: what always matters first. */
export const tiersFields = schema(words.labels, {
  edge: length({ start: { cm: '72', mm: '720', in: '28' }, usual: 'around' }),
  cloth: length({ start: { cm: '140', mm: '1400', in: '55' }, usual: 'clothWidth' }),
  ratios: numbers(words.needed, { start: '1.5' }),
  by,
  depths: lengths(words.needed, {
    start: { cm: '20; 22; 28', mm: '200; 220; 280', in: '8; 9; 11' },
    when: by.is('own'),
  }),
  count: count({ start: '3', when: growing }),
  growth: number({ start: '1.2', when: growing }),
  long: maybeLength(words.notGiven, {
    start: { cm: '70', mm: '700', in: '28' },
    usual: 'garmentLength',
    needed: { when: growing, after: by },
  }),
  ring: choice(words.ring),
  parts: count({ start: '4', usual: 'closures' }),
  seam: length({ start: { cm: '1', mm: '10', in: '3/8' }, usual: 'seamAllowance', givesWay: true }),
  between: length({
    start: { cm: '1', mm: '10', in: '3/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  hem: lengthOrNone(words.none, {
    start: { cm: '3', mm: '30', in: '1 1/4' },
    usual: 'hemDepth',
    givesWay: true,
  }),
});

/** What was read of the fields. */
export type TiersAsked = InputOf<(typeof tiersFields)['specs']>;

export const TIERS_FIELDS = [
  ...(['edge', 'ratios', 'by', 'depths', 'count', 'growth', 'long'] as const),
  ...(['cloth', 'ring', 'parts', 'seam', 'between', 'hem'] as const),
] as const satisfies readonly (keyof TiersAsked)[];

/** The tiers that are asked for. */
export function tiersInput(asked: TiersAsked): TiersInput {
  const { edge, ratios, cloth, ring, parts, seam, between, hem } = asked;
  return {
    ...{ edge, ratios, cloth, parts, seam, between, hem },
    ring: ring === 'closed',
    depths: depthsAsked(asked),
  };
}

function depthsAsked({ by, depths, count, growth, long }: TiersAsked): TierDepths {
  return by === 'own' ? { by, depths, long } : { by, ...needed({ count, growth, long }) };
}
