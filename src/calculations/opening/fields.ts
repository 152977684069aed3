import { openingWords as words } from '#words/calculations/opening-words.ts';
import { choice, length, lengthBeside, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const passes = choice(words.passes);
const below = maybeLength(words.notGiven, { usual: 'around' });

/** What is asked of an edge that something has to pass. */
export const openingFields = schema(words.labels, {
  body: length({
    start: { cm: '57', mm: '570', in: '22 1/2' },
    usual: 'around',
    label: (ask) => {
      const which = ask(passes) as keyof typeof words.passes;
      return which === 'head' ? undefined : words.body[which];
    },
  }),
  edge: length({ start: { cm: '40', mm: '400', in: '15 3/4' }, usual: 'around' }),
  ease: length({ start: { cm: '2', mm: '20', in: '3/4' }, usual: 'wearingEase', givesWay: true }),
  slit: maybeLength(words.none, { usual: 'across' }),
  passes,
  way: choice(words.way),
  below,
  down: lengthBeside(below, words.notGiven, { usual: 'garmentLength' }),
});

/** What was read of the fields. */
export type OpeningAsked = InputOf<(typeof openingFields)['specs']>;
