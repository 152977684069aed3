import { levelWords as words } from '#words/calculations/level-words.ts';
import { length, lengthOrNone, lengths, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

/** What is asked of a hem levelled from the floor: what always matters first. */
export const levelFields = schema(words.labels, {
  heights: lengths(words.needed, {
    start: { cm: '30; 31.5; 33; 32', mm: '300; 315; 330; 320', in: '12; 12 1/2; 13; 12 3/4' },
  }),
  hem: length({ start: { cm: '38', mm: '380', in: '15' }, usual: 'garmentLength' }),
  allowance: lengthOrNone(words.none, {
    start: { cm: '4', mm: '40', in: '1 1/2' },
    usual: 'hemDepth',
    givesWay: true,
  }),
  sweep: maybeLength(words.notGiven, { usual: 'around' }),
});

/** What was read of the fields. */
export type LevelAsked = InputOf<(typeof levelFields)['specs']>;

export const LEVEL_FIELDS = ['heights', 'hem', 'allowance'] as const;
