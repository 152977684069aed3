import type { MatchQuote } from '../../../sewing/sources/matching.ts';
import { matchQuotes } from '../published/published-match-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Each edge by what is matched: its field, and how it is called in a sentence. */
interface Edge {
  label: string;
  called: string;
}

const here = {
  any: { label: 'This edge, by notches', called: 'this edge' },
  sleeve: { label: 'Armhole, by notches', called: 'the armhole' },
  facing: { label: 'Neckline, by notches', called: 'the neckline' },
  band: { label: 'Neck edge, by notches', called: 'the neck edge' },
  cuff: { label: 'Cuff, by notches', called: 'the cuff' },
  waistband: { label: 'Waistband, by notches', called: 'the waistband' },
} satisfies Record<string, Edge>;

const other: Readonly<Record<keyof typeof here, Edge>> = {
  any: { label: 'The edge it meets', called: 'the edge it meets' },
  sleeve: { label: 'Sleeve head', called: 'the sleeve head' },
  facing: { label: 'Facing', called: 'the facing' },
  band: { label: 'Band', called: 'the band' },
  cuff: { label: 'Sleeve end', called: 'the sleeve end' },
  waistband: { label: 'Waist', called: 'the waist' },
};

/** A length by its number, or all of them together. */
const inLength = (i: number) => (i === 0 ? 'in all' : `in length ${i}`);
const ofLength = (i: number) => (i === 0 ? 'In all' : `Length ${i}`);
const lengthsSaid = (count: number) => `${count} ${count === 1 ? 'length' : 'lengths'}`;

const notchesSaid = (notches: readonly number[]) =>
  notches.length === 1
    ? `Notch ${notches[0]}`
    : `Notches ${notches.slice(0, -1).join(', ')} and ${notches.at(-1)}`;

/** Two edges matched from notch to notch. */
export const matchWords = {
  title: CALCULATION_NAMES.match,
  labels: {
    here: here.any.label,
    other: other.any.label,
    alone: 'Notches left over',
    use: 'What is matched',
    parts: 'Parts, each length',
    cloth: 'The cloth eases in',
    ease: 'Eases in, per cent',
    spread: 'Share the difference',
    shares: 'Shares, one each length',
    weights: 'Ease in each part',
    hereFrom: 'Armhole given',
    otherFrom: 'Sleeve head given',
  },
  use: {
    any: 'Any two edges',
    sleeve: 'Sleeve into armhole',
    facing: 'Facing to neckline',
    band: 'Band to neck edge',
    cuff: 'Cuff onto sleeve',
    waistband: 'Waistband onto waist',
  },
  from: { front: 'Front first', back: 'Back first' },
  mixed: 'notches: front on back',
  mixedNumber: '1 on 2',
  mixedWhy: (front: boolean) =>
    `The armhole is given ${front ? 'front' : 'back'} first, the sleeve head ${front ? 'back' : 'front'} first: its single notch would meet the double one. Turn the sleeve head round, or say that it is given from the same side.`,
  turn: 'Turn the sleeve head round',
  notches: 'Notches, armhole and sleeve head',
  notchesOf: (first: string, last: string, front: boolean) =>
    front
      ? `mark ${first} single, on the front; mark ${last} double, on the back`
      : `mark ${first} double, on the back; mark ${last} single, on the front`,
  fullest: 'Fullest part',
  fullestLeast: 'Fullest part, at least',
  fullestOf: (percent: string, takes: string) => `${percent} % of the ${takes} % the cloth takes`,
  here,
  other,
  spread: { even: 'By length', own: 'By my shares' },
  spreadSleeve: { free: 'None under the arm', even: 'By length', own: 'By my shares' },
  none: 'lengths, parted by ;',
  notSaid: 'numbers, parted by ;',
  which: 'say which',
  byLength: 'by length',
  evenly: 'the same',
  edges: 'Both edges, notches joined, what is eased marked on the longer',
  parts: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`,
  about: 'about',
  ease: (edge: string) => `to ease in on ${edge}`,
  alike: 'between them: both are alike',
  tooFull: (i: number) => `too much ${inLength(i)}`,
  tooShort: (i: number, edge: string) => `missing on ${edge} ${inLength(i)}`,
  seamOff: (edge: string, i: number) => `to move notch ${i} of ${edge}`,
  /** How they are sewn: nothing is eased in where both are alike, and what doesn’t fit isn’t sewn yet. */
  sewn: {
    eased: 'Pin notch to notch, then mark to mark; sew with the longer edge below.',
    turned:
      'Pin notch to notch, then mark to mark; sew each length with its longer edge below: it isn’t the same edge in all of them.',
    alike: 'Pin notch to notch, then mark to mark, and sew: neither edge is longer.',
    moved: 'Move the notches as listed first; then pin notch to notch, and sew.',
    mended:
      'Mend that before it is sewn: it would be pulled or pushed in to fit. Then pin notch to notch, mark to mark.',
  },
  sentence: (sewn: string, other: string, here: string) =>
    `${sewn} Marks are measured from where both edges begin, on ${here} and on ${other} each by itself.`,
  planned: (edge: string) => `Only the whole of ${edge} is given: notch it as listed.`,
  unpaired: (
    [few, has]: readonly [edge: string, lengths: number],
    [more, needs]: readonly [edge: string, lengths: number],
    whole: string,
  ) =>
    `Of ${few} only ${lengthsSaid(has)} ${has === 1 ? 'is' : 'are'} given, of ${more} ${needs}: nothing is shared or marked until it is said which ${needs - has === 1 ? 'notch' : `${needs - has} notches`} of ${more} ${needs - has === 1 ? 'meets' : 'meet'} none. Or give as many of both, or all of ${whole} as one.`,
  leaveOut: (left: readonly number[], edge: string, eases: readonly string[]) =>
    `${notchesSaid(left)} of ${edge} left over: lengths ease ${eases.join(', ')}`,
  less: (by: string) => `−${by}`,
  sewPast: (left: readonly number[], edge: string) =>
    `${notchesSaid(left)} of ${edge} ${left.length === 1 ? 'meets' : 'meet'} none: sew past; lengths are counted between notches that meet.`,
  meetsNone: (at: string) => `left over, ${at} from the beginning`,
  whole: (edge: string) => `All of ${edge}`,
  wholeOf: (total: string, count: number) => `${total} in ${lengthsSaid(count)}`,
  length: (i: number) => `Length ${i}`,
  lengthOf: (ease: string, percent: string, shorter: boolean) =>
    shorter ? `${ease} shorter, ${percent} % to stretch` : `${ease} to ease, ${percent} %`,
  lengthSame: 'alike',
  all: 'In all',
  move: (i: number, edge: string) => `Notch ${i} of ${edge}`,
  moveOf: (by: string, on: boolean) =>
    on ? `move it ${by} towards the end` : `move it ${by} towards the beginning`,
  notch: (i: number, edge: string) => `Notch ${i} of ${edge}`,
  notchOf: (at: string) => `${at} from the beginning`,
  published: 'Published',
  publishedOf: ({ quote }: { quote: MatchQuote }) => quoted(matchQuotes[quote]),
  marks: (edge: string) => `Marks on ${edge}`,
  mark: 'Mark',
  short: (i: number, other: string, here: string, by: string) =>
    `${ofLength(i)}: ${other} is ${by} shorter than ${here}: it would be stretched, not eased.`,
  over: (i: number, by: string, percent: string, takes: string, less: string) =>
    `Length ${i}: ${by} to ease is ${percent} % in its fullest part, the cloth takes about ${takes} %. Make the longer edge ${less} shorter there, spread the ease over more parts, or gather it.`,
  overAll: (by: string, percent: string, takes: string, less: string) =>
    `In all ${by} to ease is ${percent} %, the cloth takes about ${takes} %. Make the longer edge ${less} shorter, or gather it.`,
  differs: (i: number, other: string, by: string, shorter: boolean) =>
    `${ofLength(i)}: ${other} is ${by} ${shorter ? 'shorter' : 'longer'}: it would pull or stand off.`,
  seamMoves: (edge: string) =>
    `In all they fit: only the notches of ${edge} lie elsewhere. Move them, or its shoulder seam, as listed.`,
  asOne: (edge: string) => `Take all of ${edge} as one`,
  anew: (edge: string) => `Notch ${edge} anew, as its ease is shared`,
  jump: (i: number) =>
    `Part ${i} takes more than twice the ease of its neighbour: it would show as a pucker. Share it more evenly.`,
  mend: {
    any: 'Make one of the edges longer or shorter there, or move its notch.',
    sleeve:
      'Raise or lower the sleeve head, take the armhole in or let it out at the side seam, or move the notch.',
    facing: 'Cut the facing again from the neckline, or move its shoulder seam.',
    band: 'Make the band longer or shorter at its centre, or move its shoulder marks.',
    cuff: 'Lay pleats or gathers where it is too much; else make the cuff longer.',
    waistband: 'Take the waist in or let it out at seams or darts, or move the notch.',
  },
  cap: 'Ease of a head: its length less the armhole’s, never less than nothing (a teaching page on sleeves).',
  capacity: 'What a cloth eases in is common practice, no source.',
  derived: 'Geometry, derived here.',
  formula: {
    all: (other: string, here: string, ease: string) => `${other} − ${here} = ${ease} in all.`,
    length: (other: string, here: string, ease: string) => `${other} − ${here} = ${ease}.`,
    percent: (ease: string, shorter: string, percent: string) =>
      `${ease} ÷ ${shorter} = ${percent} %.`,
    sum: (all: readonly string[], whole: string) => `${all.join(' + ')} = ${whole}.`,
  },
};
