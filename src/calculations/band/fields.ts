import { bandWords as words } from '#words/calculations/band-words.ts';
import { choice, length, lengthOrNone, maybeLength, not } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { BandInput } from '../../sewing/bands/band.ts';

const what = choice(words.what);
const opens = choice(words.opens);
export const interfaced = choice(words.interfaced);
const open = not(opens.is('ring'));

/** What is asked of a band: what always matters first. */
export const bandFields = schema(words.labels, {
  what,
  girth: length({ start: { cm: '70', mm: '700', in: '28' }, usual: 'around' }),
  ease: lengthOrNone(words.none, {
    start: { cm: '2', mm: '20', in: '3/4' },
    usual: 'bandEase',
    givesWay: true,
  }),
  opens,
  overlap: lengthOrNone(words.flush, { when: open, usual: 'lap' }),
  underlap: lengthOrNone(words.none, {
    start: { cm: '5', mm: '50', in: '2' },
    when: open,
    usual: 'lap',
    givesWay: true,
  }),
  pass: maybeLength(words.notGiven, { when: opens.is('ring'), usual: 'around' }),
  wide: length({ start: { cm: '4', mm: '40', in: '1 1/2' }, usual: 'bandWide' }),
  make: choice(words.make),
  seam: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  interfaced,
  edge: maybeLength(words.notGiven, { usual: 'around' }),
  front: maybeLength(words.half, { usual: 'around' }),
  thickness: maybeLength(words.notGiven, { usual: 'clothThick' }),
  cloth: maybeLength(words.longEnough, { usual: 'stripLength' }),
});

/** What was read of the fields. */
export type BandAsked = InputOf<(typeof bandFields)['specs']>;

/** What the band itself is worked out from. */
export const BAND_FIELDS = [
  'girth',
  'ease',
  'opens',
  'overlap',
  'underlap',
  'pass',
  'wide',
  'make',
  'thickness',
  'seam',
  'front',
] as const satisfies readonly (keyof BandInput & keyof BandAsked)[];
