import { collarWords as words } from '#words/calculations/collar-words.ts';
import { length, lengthOrNone, maybeLength, number } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { CollarInput } from '../../sewing/bands/collar.ts';

/** What is asked of a collar: what always matters first. */
export const collarFields = schema(words.labels, {
  front: length({ start: { cm: '11', mm: '110', in: '4 1/4' }, usual: 'neckPart' }),
  back: length({ start: { cm: '8.5', mm: '85', in: '3 3/8' }, usual: 'neckPart' }),
  deep: length({ start: { cm: '7', mm: '70', in: '2 3/4' }, usual: 'collarDeep' }),
  stand: lengthOrNone(words.flat, {
    start: { cm: '3', mm: '30', in: '1 1/8' },
    usual: 'collarDeep',
  }),
  past: lengthOrNone(words.none, { usual: 'lap' }),
  outer: maybeLength(words.straight, { usual: 'around' }),
  seam: lengthOrNone(words.none, {
    start: { cm: '1', mm: '10', in: '3/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  upperThick: maybeLength(words.thin, { usual: 'clothThick' }),
  underThick: maybeLength(words.thin, { usual: 'clothThick' }),
  between: maybeLength(words.thin, { usual: 'clothThick' }),
  rolled: number({ start: '180' }),
  under: lengthOrNone(words.none, { start: { cm: '0.1', mm: '1', in: '1/32' } }),
});

/** What was read of the fields. */
export type CollarAsked = InputOf<(typeof collarFields)['specs']>;

/** What a collar is worked out from: all that is asked. */
export const COLLAR_FIELDS = [
  'front',
  'back',
  'past',
  'deep',
  'stand',
  'outer',
  'upperThick',
  'underThick',
  'between',
  'rolled',
  'under',
  'seam',
] as const satisfies readonly (keyof CollarAsked & keyof CollarInput)[];
