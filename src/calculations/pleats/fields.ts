import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import {
  all,
  choice,
  count,
  given,
  length,
  maybeLength,
  not,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { PleatsInput } from '../../sewing/fullness/pleat-input.ts';
import { pleatsInStrip } from '../../sewing/fullness/pleat-strip.ts';
import type { Outcome } from '../../sewing/problem.ts';

const kind = choice(words.kinds);
const by = choice(words.by);
const inStrip = by.is('strip');
const cloth = maybeLength(words.notGiven, { when: not(inStrip), usual: 'clothWidth' });

/** What is asked of pleats: what always matters first. */
export const pleatFields = schema(words.labels, {
  finished: length({
    start: { cm: '92', mm: '920', in: '36' },
    when: not(inStrip),
    usual: 'around',
  }),
  there: length({
    start: { cm: '238', mm: '2380', in: '93' },
    when: inStrip,
    usual: 'stripLength',
  }),
  width: length({
    start: { cm: '5', mm: '50', in: '2' },
    when: by.is('width', 'strip'),
    usual: 'pleatWidth',
  }),
  count: count({ start: '18', when: by.is('count'), usual: 'pleats' }),
  depth: length({ start: { cm: '4', mm: '40', in: '1 1/2' }, usual: 'pleatDepth', givesWay: true }),
  kind,
  by,
  face: maybeLength(words.twice, { when: kind.is('box'), usual: 'pleatWidth' }),
  ends: choice(words.ends, { when: kind.is('knife') }),
  flat: maybeLength(words.noFlat, { usual: 'flatPart' }),
  seam: length({ start: { cm: '1', mm: '10', in: '3/8' }, usual: 'seamAllowance', givesWay: true }),
  lower: maybeLength(words.notGiven, { usual: 'around' }),
  edge: maybeLength(words.notGiven, { usual: 'around' }),
  cloth,
  deep: maybeLength(words.notGiven, { when: all(not(inStrip), given(cloth)), usual: 'stripDeep' }),
});

/** What was read of the fields. */
export type PleatsAsked = InputOf<(typeof pleatFields)['specs']>;
/** What is typed in fields for the maker. */
export type PleatsTyped = Typed<(typeof pleatFields)['specs']>;

/** What the pleats themselves are worked out from: the rest says what cloth they are cut from. */
export const PLEAT_FIELDS = [
  'finished',
  'there',
  'width',
  'count',
  'depth',
  'kind',
  'by',
  'face',
  'ends',
  'flat',
  'seam',
] as const satisfies readonly (keyof PleatsAsked)[];

/**
 * The pleats that are asked for; where the strip is there, those it gives.
 *
 * @param begun so many of them instead, where they are begun
 */
export function pleatsInput(
  asked: Pick<PleatsAsked, (typeof PLEAT_FIELDS)[number]>,
  begun?: number,
): Outcome<PleatsInput> {
  const { finished, there, width, count, depth, kind, by, face, ends, flat = ZERO, seam } = asked;
  const same = { kind, depth, face, ends, flat, seam };
  if (by === 'strip') return pleatsInStrip({ ...same, ...needed({ there, width }) }, begun);
  const rule = by === 'count' ? { by, ...needed({ count }) } : { by, ...needed({ width }) };
  const counted = begun === undefined ? rule : ({ by: 'count', count: begun } as const);
  return { ok: true, value: { ...same, ...needed({ finished }), rule: counted } };
}

/** Where else the same strip is fitted, from above. */
export const LEVELS = ['lower', 'edge'] as const satisfies readonly (keyof PleatsAsked)[];
export type LevelField = (typeof LEVELS)[number];
