import type { HookQuote } from '../../../sewing/sources/hooks.ts';
import { hookQuotes } from '../published/published-hook-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

interface Named {
  one: string;
  /** One of them in a sentence. */
  single: string;
  many: string;
  label: string;
}

/** What each field of the closures is called. */
const labels = {
  opening: 'Opening',
  count: 'How many',
  top: 'First, from the top',
  bottom: 'Last, from the bottom',
  by: 'Spaced by',
  pitch: 'Centre to centre',
  gap: 'Clear gap',
  width: 'Width of one',
  ends: 'Ends',
  level: 'One must be at',
  levelBy: 'To meet that level',
  sewn: 'Already sewn at',
  leastGap: 'Clear gap, at least',
  follow: 'Follows the places',
  offset: 'Further down by',
  item: 'What is placed',
  side: 'The other side',
  setBack: 'Set back from the edge',
  lap: 'Lap',
};

const items: Readonly<Record<'hook' | 'button' | 'snap' | 'tie', Named>> = {
  hook: { one: 'Hook', single: 'hook', many: 'hooks', label: 'Hooks and eyes' },
  button: { one: 'Button', single: 'button', many: 'buttons', label: 'Buttons' },
  snap: { one: 'Snap', single: 'snap', many: 'snaps', label: 'Snaps' },
  tie: { one: 'Tie', single: 'pair of ties', many: 'pairs of ties', label: 'Ties' },
};

/** Closures along an opening. */
export const closuresWords = {
  title: CALCULATION_NAMES.closures,
  buttonhole: 'Buttonhole for a button',
  parts: 'Halves, quarters, eighths',
  labels,
  items,
  none: 'none',
  samePlaces: 'nothing',
  unknownWidth: 'not given',
  by: {
    count: 'Number',
    widest: 'Widest space',
    exact: 'Exact space',
    gap: 'Clear gap',
  },
  ends: {
    given: 'As given',
    whole: 'A whole space',
    half: 'Half a space',
  },
  levelBy: {
    'two-pitches': 'Two spacings, ends kept',
    'moved-ends': 'One spacing, ends moved',
  },
  sides: {
    none: 'Not shown',
    meet: 'Edges just meet',
    lap: 'One laps the other',
  },
  fromTop: 'from the top edge',
  apart: (even: boolean) => (even ? 'apart' : 'apart at the top'),
  about: 'about',
  sentence: (count: number, item: Named, first: string, pitches: string) =>
    `${count} ${item.many}, the first ${first} from the top edge${pitches === '' ? '' : `: ${pitches}`}. Measure all from that edge.`,
  counted: (count: number, item: Named) => `${count} ${count === 1 ? item.single : item.many}`,
  one: (item: Named, first: string) => `One ${item.single}, ${first} from the top edge.`,
  stretch: (spaces: number, pitch: string, asMade: boolean) =>
    `${spaces} × ${pitch}${asMade ? ' (sewn)' : ''}`,
  offLevel: (served: boolean, off: string, below: boolean) =>
    `${served ? 'The sewn one that serves the level' : 'The level gives way: the nearest'} is ${off} ${below ? 'below' : 'above'} it.`,
  givesWay: {
    end: (top: boolean, is: string, asked: string) =>
      `The ${top ? 'top' : 'bottom'} end gives way: the ${top ? 'first' : 'last'} is ${is} from the edge, not ${asked}.`,
    gap: (is: string, asked: string) => `The clear gap gives way: ${is}, not ${asked}.`,
  },
  overhang: (top: boolean, by: string) =>
    `The ${top ? 'first' : 'last'} hangs over the ${top ? 'top' : 'bottom'} edge by ${by}.`,
  endsLabel: 'Ends',
  endsOf: (top: string, bottom: string) => `${top} above, ${bottom} below`,
  gap: 'Clear gap, at least',
  left: 'Left over',
  leftOf: (above: string | undefined, below: string) =>
    `${above === undefined ? '' : `${above} more at the top, `}${below} more at the bottom than asked`,
  evenly: (count: number) => `Or ${count} with nothing left over`,
  orMovedEnds: (pitches: string, ends: string) => `Or one spacing: ${pitches}; ends ${ends}`,
  orTwoPitches: (pitches: string) => `Or two spacings, ends kept: ${pitches}`,
  thisSide: 'This side',
  otherSide: 'Other side, same marks from the same edge',
  setBackFrom: (length: string) => `${length} in from the edge`,
  projects: (length: string) => `stands ${length} past the edge`,
  setBackSources: (one: { quote: HookQuote }, other: { quote: HookQuote }) =>
    `Both are published: ${quoted(hookQuotes[one.quote])}; ${quoted(hookQuotes[other.quote])}.`,
  source: 'Divide by the spaces, not by the closures (The New Dressmaker, handbook, 1921).',
  formula: {
    shares: ', the ends counted in',
    widest: (pitch: string) => ` The fewest with no space wider than ${pitch}.`,
    toLast: ' to the last',
    left: ' left over',
    above: ' above',
    below: ' below',
    least: ' Of all ways to share the spaces out, these two differ least.',
    narrowed: (even: string) => `Less than the even ${even}, to keep the ends clear of the edges. `,
    followed: (count: number, offset: string) =>
      `The ${count === 1 ? 'place' : `${count} places`} it follows${offset === '' ? '' : `, each ${offset} further from the top edge`}.`,
    around: (asked: string) =>
      `What is sewn stays; the others go where the spaces are widest, then evenly${asked}.`,
    within: (pitch: string) => `, none wider than ${pitch}`,
    nearest: (pitch: string) => `, nearest to ${pitch}`,
  },
};
