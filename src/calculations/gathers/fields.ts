import { gathersWords as words } from '#words/calculations/gathers-words.ts';
import {
  choice,
  count,
  given,
  length,
  lengthOrNone,
  maybeLength,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';

const by = choice(words.by);
const have = length({
  start: { cm: '90', mm: '900', in: '36' },
  when: by.is('cloth'),
  usual: 'stripLength',
});
const ring = choice(words.ring, { start: 'open' });
const ofCloth = { when: by.is('cloth'), after: have };
const cloth = maybeLength(words.notGiven, {
  start: { cm: '110', mm: '1100', in: '43 1/4' },
  usual: 'clothWidth',
  needed: ofCloth,
});
const deep = maybeLength(words.notGiven, {
  start: { cm: '12', mm: '120', in: '4 3/4' },
  usual: 'stripDeep',
  needed: ofCloth,
});

/** What is asked of gathers: what always matters first. */
export const gathersFields = schema(words.labels, {
  edge: length({ start: { cm: '180', mm: '1800', in: '70 3/4' }, usual: 'around' }),
  by,
  ratio: number({ start: '3', when: by.is('ratio') }),
  part: number({ start: '2/5', when: by.is('part') }),
  sampleFlat: length({
    start: { cm: '25', mm: '250', in: '10' },
    when: by.is('sample'),
    usual: 'stripLength',
  }),
  sampleGathered: length({
    start: { cm: '10', mm: '100', in: '4' },
    when: by.is('sample'),
    usual: 'stripLength',
  }),
  strip: length({
    start: { cm: '440', mm: '4400', in: '173' },
    when: by.is('strip'),
    usual: 'stripLength',
  }),
  have,
  ring,
  flat: maybeLength(words.noFlat, { usual: 'flatPart' }),
  parts: count({ start: '4', usual: 'closures' }),
  cloth,
  seam: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  ends: maybeLength(words.asSeam, { when: ring.is('open'), usual: 'seamAllowance' }),
  deep,
  top: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  hem: lengthOrNone(words.noFlat, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: given(deep),
    usual: 'hemDepth',
    givesWay: true,
  }),
});

/** What was read of the fields. */
export type GathersAsked = InputOf<(typeof gathersFields)['specs']>;
/** What is typed in fields for the maker. */
export type GathersTyped = Typed<(typeof gathersFields)['specs']>;

/** What its marks and its fullness are worked out from, and what the cloth adds where that decides. */
export const GATHER_FIELDS = [
  'edge',
  'by',
  'ratio',
  'part',
  'sampleFlat',
  'sampleGathered',
  'strip',
  'have',
  'ring',
  'flat',
  'parts',
  'cloth',
  'seam',
  'ends',
  'deep',
  'top',
  'hem',
] as const satisfies readonly (keyof GathersAsked)[];

/** Of them, what is read only where the cloth that is there decides. */
export const BY_CLOTH = {
  cloth: by.is('cloth'),
  deep: by.is('cloth'),
  top: by.is('cloth'),
  hem: by.is('cloth'),
};
