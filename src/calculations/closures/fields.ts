import { closuresWords as words } from '#words/calculations/closures-words.ts';
import {
  all,
  choice,
  count,
  given,
  length,
  lengthOrNone,
  lengths,
  maybeLength,
  not,
} from '../../calculation/field-spec.ts';
import { maybeRun } from '../../calculation/run-field.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';

export type Item = keyof typeof words.items;

const itemLabels = Object.fromEntries(
  Object.entries(words.items).map(([key, { label }]) => [key, label]),
) as Record<Item, string>;

const follow = maybeRun(words.none);
/** A row that follows another has its places from there. */
const alone = not(given(follow));
const by = choice(words.by, { when: alone });
const ends = choice(words.ends, { when: alone });
const side = choice(words.sides);
const asGiven = all(alone, ends.is('given'));
const gap = length({
  start: { cm: '3', mm: '30', in: '1' },
  when: all(alone, by.is('gap')),
  usual: 'closurePitch',
});
const level = maybeLength(words.none, { when: alone });
const sewn = lengths(words.none, { when: alone });
const width = maybeLength(words.unknownWidth, {
  usual: 'closureWidth',
  needed: { when: all(alone, by.is('gap')), after: gap },
});

/** What is asked of a row of closures: what always matters first. */
export const closureFields = schema(words.labels, {
  opening: length({ start: { cm: '46.3', mm: '463', in: '18 1/4' }, usual: 'opening' }),
  count: count({ start: '7', when: all(alone, by.is('count')), usual: 'closures' }),
  gap,
  pitch: length({
    start: { cm: '5', mm: '50', in: '2' },
    when: all(alone, by.is('widest', 'exact')),
    usual: 'closurePitch',
  }),
  top: length({
    start: { cm: '1.2', mm: '12', in: '1/2' },
    when: asGiven,
    usual: 'endMargin',
    givesWay: true,
  }),
  bottom: length({
    start: { cm: '2.5', mm: '25', in: '1' },
    when: asGiven,
    usual: 'endMargin',
    givesWay: true,
  }),
  by,
  ends,
  level,
  // An exact space, or gap, always moves the ends.
  levelBy: choice(words.levelBy, {
    when: all(alone, given(level), by.is('count', 'widest')),
  }),
  sewn,
  item: choice(itemLabels),
  width,
  // A number can keep a gap around what is sewn, where a width is known; other rules have their own.
  leastGap: maybeLength(words.none, {
    when: all(alone, by.is('count'), given(sewn), given(width)),
  }),
  side,
  setBack: length({ start: '1/8 in', when: not(side.is('none')), usual: 'setBack' }),
  lap: length({
    start: { cm: '2', mm: '20', in: '3/4' },
    when: side.is('lap'),
    usual: 'lap',
  }),
  follow,
  offset: lengthOrNone(words.samePlaces, { when: given(follow) }),
});

/** What was read of the fields. */
export type ClosuresAsked = InputOf<(typeof closureFields)['specs']>;
/** What is typed in fields for the maker. */
export type ClosuresTyped = Typed<(typeof closureFields)['specs']>;
