import { matchWords as words } from '#words/calculations/match-words.ts';
import { clothEaseWords } from '#words/common/cloth-ease-words.ts';
import { type Ask, choice, count, lengths, number, numbers } from '../../calculation/field-spec.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';
import { fewerOf } from '../../sewing/pieces/matching-pairs.ts';
import { parted } from './parted.ts';

/** What two edges are of. */
export type MatchUse = keyof typeof words.use;
/** How the difference is shared between the lengths. */
export type Spread = keyof typeof words.spreadSleeve;

const use = choice(words.use, { start: 'sleeve' });
/** Whether a sleeve is set into its armhole. */
const isSleeve = use.is('sleeve');

const spread = choice<Spread>((ask) => (isSleeve(ask) ? words.spreadSleeve : words.spread), {
  known: (value) => Object.hasOwn(words.spreadSleeve, value),
});
const cloth = choice(clothEaseWords, { start: 'medium' });

const labelOf = (of: Readonly<Record<MatchUse, { label: string }>>) => (ask: Ask) => {
  const chosen = ask(use);
  return Object.hasOwn(of, chosen) ? of[chosen as MatchUse].label : undefined;
};

const here = lengths(words.none, {
  start: { cm: '12; 12; 11; 11', mm: '120; 120; 110; 110', in: '4 3/4; 4 3/4; 4 1/4; 4 1/4' },
  label: labelOf(words.here),
});
const other = lengths(words.none, {
  start: { cm: '12; 12.6; 11.6; 11', mm: '120; 126; 116; 110', in: '4 3/4; 5; 4 1/2; 4 1/4' },
  label: labelOf(words.other),
});

/** Whether one edge has notches that meet none of the other's. */
const leaves = (ask: Ask) =>
  fewerOf({ here: parted(ask(here)), other: parted(ask(other)) }) !== undefined;

/** What is asked of two edges: what always matters first. */
export const matchFields = schema(words.labels, {
  here,
  other,
  alone: numbers(words.notSaid, { when: leaves }),
  use,
  parts: count({ start: '2', usual: 'matchParts' }),
  cloth,
  ease: number({ start: '6', usual: 'ease', when: cloth.is('own') }),
  spread,
  shares: numbers(words.byLength, { when: spread.is('own') }),
  weights: numbers(words.evenly),
  hereFrom: choice(words.from, { when: isSleeve }),
  otherFrom: choice(words.from, { when: isSleeve }),
});

/** What was read of the fields. */
export type MatchAsked = InputOf<(typeof matchFields)['specs']>;
/** What is typed in fields for the maker. */
export type MatchTyped = Typed<(typeof matchFields)['specs']>;
