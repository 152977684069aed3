import { buttonholeWords as words } from '#words/calculations/buttonhole-words.ts';
import { choice, given, length, lengthOrNone, maybeLength } from '../../calculation/field-spec.ts';
import { maybeRun } from '../../calculation/run-field.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const holeRule = choice(words.holeRules);
/** The row of buttons it has its places from. */
export const follow = maybeRun(words.noRow);

/** What is asked of a buttonhole: its button, and the rules the maker chooses. */
export const buttonholeFields = schema(words.labels, {
  diameter: length({ start: '24 L', usual: 'button' }),
  girth: maybeLength(words.notMeasured, { when: holeRule.is('half-girth-eighth') }),
  thickness: length({ start: '3 mm', usual: 'buttonThick' }),
  holeRule,
  holeWay: choice(words.holeWays),
  follow,
  offset: lengthOrNone(words.samePlaces, { when: given(follow) }),
});

/** What was read of the fields. */
export type ButtonholeAsked = InputOf<(typeof buttonholeFields)['specs']>;
