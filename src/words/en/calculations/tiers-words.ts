import type { GatherQuote } from '../../../sewing/sources/gathers.ts';
import { gatherQuotes } from '../published/published-gather-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly GatherQuote[]) =>
  `${quotes.map((quote) => quoted(gatherQuotes[quote])).join('; ')}.`;

const listed = (list: readonly number[]) =>
  `${list.length === 1 ? 'Tier' : 'Tiers'} ${list.join(', ')}`;

/** Tiers of gathered strips, each on the one above. */
export const tiersWords = {
  title: CALCULATION_NAMES.tiers,
  one: 'One frill alone',
  labels: {
    edge: 'Edge of the first',
    ratios: 'Times as full',
    by: 'Depths',
    depths: 'Each, finished',
    count: 'Tiers',
    growth: 'Each deeper, times',
    long: 'Length they come to',
    cloth: 'Cloth wide',
    ring: 'The tiers',
    parts: 'Marks: parts',
    seam: 'Seam of a join',
    between: 'Seam between tiers',
    hem: 'Hem of the last',
  },
  by: { own: 'Each given', growing: 'Growing downwards' },
  ring: { closed: 'Go all round', open: 'Have two ends' },
  needed: 'one for all, or one each',
  notGiven: 'not given',
  none: 'none',
  about: 'about',
  after: (count: number) => `of cloth for ${count === 1 ? 'one tier' : `${count} tiers`}`,
  sentence: (parts: number) =>
    `Join the strips of each tier. Mark its upper edge and the edge above in ${parts} parts, pin mark to mark, draw the rows up between them, stitch.`,
  times: (ratio: string) => `${ratio} times`,
  tier: (i: number, times: string) => `Tier ${i}, ${times}`,
  tierOf: (deep: string, long: string, count: number, joins: number) =>
    `${deep} deep, ${long} joined: ${count === 1 ? '1 strip' : `${count} strips`}, ${joins === 0 ? 'no join' : joins === 1 ? '1 join' : `${joins} joins`}`,
  round: 'The last, along',
  roundOf: (long: string, times: string) => `${long}, ${times} times the first edge`,
  long: 'Depths together',
  left: 'Of the length left',
  comesOut: 'nothing: they come to it',
  over: (size: string) => `they are ${size} longer`,
  flat: (list: readonly number[]) => `${listed(list)}: as long as the edge, nothing is gathered.`,
  ease: (list: readonly number[]) =>
    `${listed(list)}: under 1.2 times is eased in, hardly gathered. Try it on a scrap.`,
  bulk: (list: readonly number[]) =>
    `${listed(list)}: over 3 times is more than cloth is commonly gathered. Try it on a scrap.`,
  heavy: (times: string) =>
    `The last tier is ${times} times the first edge: it grows heavy and may pull the seams down.`,
  littleLeft: (list: readonly number[]) =>
    `${listed(list)}: hardly any cloth is left over. Measure its usable width again, a little less would take one strip more.`,
  cut: 'Before you cut: measure the edge as it is sewn, and each tier as it came out before you cut the next.',
  stripMarks: (i: number) => `Tier ${i}: marks on its upper edge`,
  edgeMarks: (i: number) =>
    i === 1 ? 'Tier 1: marks on its edge' : `Tier ${i}: marks on tier ${i - 1}`,
  mark: 'Mark',
  figure: 'The edge, and each tier below it as it is cut, with the marks that meet',
  partsCount: (count: number) => `${count} parts`,
  source: says('frill', 'tiers'),
  depthsSource: (by: 'own' | 'growing') =>
    by === 'own' ? says('tier-depths') : 'Growing depths: a geometric series, derived here.',
  stripsSource:
    'Strips: each join takes a seam of both (Dress Making, Trade Practical 2, government teaching book, 2024).',
  formula: {
    row: (ratio: string, above: string, strip: string) => `${ratio} × ${above} = ${strip}. `,
    sum: (depths: readonly string[], long: string) => `${depths.join(' + ')} = ${long}.`,
    equal: (long: string, count: number, first: string) => `${long} ÷ ${count} = ${first}.`,
    growing: (long: string, growth: string, count: number, first: string) =>
      `${long} ÷ (${Array.from({ length: count }, (_, i) => (i === 0 ? '1' : Array(i).fill(growth).join(' × '))).join(' + ')}) = ${first}.`,
    each: (cloth: string, seam: string) => (seam === '' ? cloth : `(${cloth} − 2 × ${seam})`),
    strips: (strip: string, each: string, exact: string, count: number) =>
      `${strip} ÷ ${each} = ${exact}, so ${count}. `,
    term: (count: number, deep: string) => `${count} × ${deep}`,
    cloth: (terms: readonly string[], cloth: string) => `${terms.join(' + ')} = ${cloth}.`,
  },
};
