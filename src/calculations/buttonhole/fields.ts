import { buttonholeWords as words } from '#words/calculations/buttonhole-words.ts';
import { choice, length, maybeLength } from '../../calculation/field-spec.ts';
import { schema } from '../../calculation/schema.ts';

const holeRule = choice(words.holeRules);

/** What is asked of a buttonhole: its button, and the rules the maker chooses. */
export const buttonholeFields = schema(words.labels, {
  diameter: length({ start: '24 L', usual: 'button' }),
  girth: maybeLength(words.notMeasured, { when: holeRule.is('half-girth-eighth') }),
  thickness: length({ start: '3 mm', usual: 'buttonThick' }),
  holeRule,
  holeWay: choice(words.holeWays),
});
