import { placketWords as words } from '#words/calculations/placket-words.ts';
import { choice, length, lengthOrNone, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const by = choice(words.by);
export const way = choice(words.way);
export const split = choice(words.split);
const ofPass = { when: by.is('passes'), usual: 'around' } as const;
const ofStrips = { when: way.is('lap', 'strips') } as const;
const ofZip = { when: way.is('zip') } as const;

/** What is asked of a placket: what always matters first. */
export const placketFields = schema(words.labels, {
  way,
  by,
  body: length({ start: { cm: '24', mm: '240', in: '9 1/2' }, ...ofPass }),
  edge: length({ start: { cm: '18', mm: '180', in: '7' }, ...ofPass }),
  ease: lengthOrNone(words.nothing, {
    start: { cm: '2', mm: '20', in: '3/4' },
    when: by.is('passes'),
    usual: 'wearingEase',
  }),
  open: length({
    start: { cm: '10', mm: '100', in: '4' },
    when: by.is('given'),
    usual: 'across',
  }),
  width: length({ start: { cm: '2', mm: '20', in: '3/4' }, ...ofStrips, usual: 'stripWidth' }),
  seam: length({ start: { cm: '0.6', mm: '6', in: '1/4' }, ...ofStrips, usual: 'seamAllowance' }),
  extra: length({
    start: { cm: '1.3', mm: '13', in: '1/2' },
    ...ofStrips,
    usual: 'seamAllowance',
    givesWay: true,
  }),
  zip: maybeLength(words.toBuy, { ...ofZip, usual: 'across' }),
  allow: length({ start: { cm: '1.6', mm: '16', in: '5/8' }, ...ofZip, usual: 'seamAllowance' }),
  row: length({ start: { cm: '0.6', mm: '6', in: '1/4' }, ...ofZip, usual: 'edgeStitch' }),
  split,
});

/** What was read of the fields. */
export type PlacketAsked = InputOf<(typeof placketFields)['specs']>;

/** What the opening itself is worked out from. */
export const OPEN_FIELDS = ['by', 'body', 'edge', 'ease', 'open'] as const;
/** What its strips are worked out from. */
export const STRIP_FIELDS = [...OPEN_FIELDS, 'way', 'width', 'seam', 'extra'] as const;
/** What its zip is worked out from. */
export const ZIP_FIELDS = [...OPEN_FIELDS, 'zip'] as const;
