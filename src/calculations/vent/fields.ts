import { ventWords as words } from '#words/calculations/vent-words.ts';
import { length, lengthBeside, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const top = maybeLength(words.notGiven, { usual: 'around' });

/** What is asked of a garment over the hips. */
export const ventFields = schema(words.labels, {
  hip: length({ start: { cm: '100', mm: '1000', in: '39' }, usual: 'around' }),
  ease: length({ start: { cm: '6', mm: '60', in: '2 1/2' }, usual: 'wearingEase', givesWay: true }),
  seat: length({ start: { cm: '108', mm: '1080', in: '42 1/2' }, usual: 'around' }),
  hem: length({ start: { cm: '102', mm: '1020', in: '40' }, usual: 'around' }),
  down: length({ start: { cm: '20', mm: '200', in: '8' }, usual: 'garmentLength' }),
  long: length({ start: { cm: '44', mm: '440', in: '17' }, usual: 'garmentLength' }),
  stride: maybeLength(words.asHip, { usual: 'around' }),
  top,
  bodyTop: lengthBeside(top, words.notGiven, { usual: 'around' }),
});

/** What was read of the fields. */
export type VentAsked = InputOf<(typeof ventFields)['specs']>;
