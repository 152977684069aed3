import { cordWords as words } from '#words/calculations/cord-words.ts';
import { choice, length, lengthOrNone } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { CordInput } from '../../sewing/fullness/cord.ts';

const by = choice(words.by);

/** What is asked of a drawstring: what always matters first. */
export const cordFields = schema(words.labels, {
  who: choice(words.who),
  widest: length({ start: { cm: '80', mm: '800', in: '32' }, usual: 'around' }),
  by,
  free: length({ start: { cm: '14', mm: '140', in: '5 1/2' }, when: by.is('free'), usual: 'tail' }),
  there: length({
    start: { cm: '108', mm: '1080', in: '43' },
    when: by.is('there'),
    usual: 'stripLength',
  }),
  thick: length({ start: { cm: '0.5', mm: '5', in: '3/16' }, usual: 'lace' }),
  knot: lengthOrNone(words.none, { usual: 'tail' }),
  turn: lengthOrNone(words.none, { start: { cm: '0.5', mm: '5', in: '1/4' }, usual: 'turn' }),
  edge: lengthOrNone(words.none, {
    start: { cm: '0.2', mm: '2', in: '1/16' },
    usual: 'edgeStitch',
  }),
  header: lengthOrNone(words.none, { usual: 'hemDepth' }),
});

/** What was read of the fields. */
export type CordAsked = InputOf<(typeof cordFields)['specs']>;

/** What cord and casing are worked out from: who wears it says only what is warned of. */
export const CORD_FIELDS = [
  'widest',
  'by',
  'free',
  'there',
  'thick',
  'knot',
  'turn',
  'edge',
  'header',
] as const satisfies readonly (keyof CordAsked)[];

/** The cord that is asked for. */
export function cordInput(asked: Pick<CordAsked, (typeof CORD_FIELDS)[number]>): CordInput {
  const { widest, by, free, there, thick, knot, turn, edge, header } = asked;
  const how = by === 'free' ? { by, ...needed({ free }) } : { by, ...needed({ there }) };
  return { thick, widest, how, knot, turn, edge, header };
}
