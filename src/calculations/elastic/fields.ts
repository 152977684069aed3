import { elasticWords as words } from '#words/calculations/elastic-words.ts';
import {
  choice,
  count,
  length,
  lengthOrNone,
  maybeLength,
  number,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { CasingInput } from '../../sewing/fullness/casing.ts';
import type { ElasticInput, ElasticLength } from '../../sewing/fullness/elastic.ts';

const by = choice(words.by);
const join = choice(words.join);
const ofSample = { when: by.is('sample'), usual: 'stripLength' } as const;

/** What is asked of an elastic in its casing: what always matters first. */
export const elasticFields = schema(words.labels, {
  girth: length({ start: { cm: '84', mm: '840', in: '33' }, usual: 'around' }),
  by,
  sampleFlat: length({ start: { cm: '20', mm: '200', in: '8' }, ...ofSample }),
  sampleWorn: length({ start: { cm: '21', mm: '210', in: '8 3/8' }, ...ofSample }),
  sampleMost: maybeLength(words.notGiven, {
    start: { cm: '36', mm: '360', in: '14' },
    ...ofSample,
  }),
  percent: number({ start: '5', when: by.is('percent') }),
  there: length({
    start: { cm: '82', mm: '820', in: '32' },
    when: by.is('there'),
    usual: 'stripLength',
  }),
  pass: maybeLength(words.notGiven, {
    start: { cm: '102', mm: '1020', in: '40' },
    usual: 'around',
  }),
  round: maybeLength(words.notGiven, {
    start: { cm: '110', mm: '1100', in: '43' },
    usual: 'around',
  }),
  join,
  lap: length({
    start: { cm: '2', mm: '20', in: '3/4' },
    when: join.is('lapped'),
    usual: 'seamAllowance',
  }),
  width: length({ start: { cm: '2.5', mm: '25', in: '1' }, usual: 'stripWidth' }),
  ease: length({ start: { cm: '0.3', mm: '3', in: '1/8' }, givesWay: true }),
  turn: lengthOrNone(words.noHeader, { start: { cm: '0.5', mm: '5', in: '1/4' }, usual: 'turn' }),
  edge: lengthOrNone(words.noHeader, {
    start: { cm: '0.2', mm: '2', in: '1/16' },
    usual: 'edgeStitch',
  }),
  header: lengthOrNone(words.noHeader, { usual: 'hemDepth' }),
  thick: length({ start: { cm: '0.1', mm: '1', in: '1/32' }, usual: 'clothThick' }),
  parts: count({ start: '4', usual: 'closures' }),
});

/** What was read of the fields. */
export type ElasticAsked = InputOf<(typeof elasticFields)['specs']>;

/** What its length is worked out from. */
export const LENGTH_FIELDS = [
  'girth',
  'by',
  'sampleFlat',
  'sampleWorn',
  'sampleMost',
  'percent',
  'there',
  'pass',
  'round',
  'join',
  'lap',
] as const satisfies readonly (keyof ElasticAsked)[];

/** What its casing is worked out from. */
export const CASING_FIELDS = [
  'width',
  'thick',
  'ease',
  'turn',
  'edge',
  'header',
] as const satisfies readonly (keyof CasingInput)[];

/** The elastic that is asked for. */
export function elasticInput(
  asked: Pick<ElasticAsked, (typeof LENGTH_FIELDS)[number]>,
): ElasticInput {
  const { girth, pass, round, lap = ZERO } = asked;
  return { girth, how: howOf(asked), pass, round, lap };
}

function howOf(asked: Pick<ElasticAsked, (typeof LENGTH_FIELDS)[number]>): ElasticLength {
  const { by, sampleFlat, sampleWorn, sampleMost: most, percent, there } = asked;
  switch (by) {
    case 'sample':
      return { by, ...needed({ flat: sampleFlat, worn: sampleWorn }), most };
    case 'percent':
      return { by, ...needed({ percent }) };
    case 'rule':
      return { by };
    case 'there':
      return { by, ...needed({ there }) };
  }
}
