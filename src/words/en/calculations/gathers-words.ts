import type { GatherQuote } from '../../../sewing/sources/gathers.ts';
import { gatherQuotes } from '../published/published-gather-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly GatherQuote[]) =>
  `${quotes.map((quote) => quoted(gatherQuotes[quote])).join('; ')}.`;

/** A strip gathered to an edge. */
export const gathersWords = {
  title: CALCULATION_NAMES.gathers,
  labels: {
    edge: 'Edge it is gathered to',
    by: 'Fullness given as',
    ratio: 'Times as full',
    part: 'Comes in to',
    sampleFlat: 'Sample, flat',
    sampleGathered: 'The same, gathered',
    strip: 'Strip there is',
    have: 'Cloth there is, long',
    ring: 'The edge',
    flat: 'Left flat, at the end',
    parts: 'Marks: parts',
    cloth: 'Cloth wide',
    seam: 'Seam of a join',
    ends: 'Each end of the strip',
    deep: 'Finished depth',
    top: 'Seam at the top',
    hem: 'Hem at the bottom',
  },
  by: {
    ratio: 'Times the edge',
    part: 'Part it comes in to',
    sample: 'Own sample',
    strip: 'Strip that is there',
    cloth: 'Cloth that is there',
  },
  ring: { closed: 'Goes all round', open: 'Has two ends' },
  noFlat: 'nothing',
  notGiven: 'not given',
  asSeam: 'as a join',
  about: 'about',
  after: 'of strip to cut, joins closed',
  afterOpen: 'of strip to cut, in one length',
  sentence: (times: string, strips: string, parts: number) =>
    `${times} times as full${strips}. Mark both edges in ${parts} parts, pin mark to mark, then draw the rows up between them.`,
  inStrips: (count: number) => `, ${count === 1 ? 'one strip' : `${count} strips joined`}`,
  full: 'Fullness',
  times: (ratio: string) => `${ratio} times`,
  ends: 'Ends, in it',
  endsOf: (each: string) => (each === '' ? 'none: add them' : `${each} at each end`),
  strips: 'Strips across the cloth',
  stripsOf: (count: number, joins: number, left: string) =>
    `${count}, ${joins === 0 ? 'no join' : joins === 1 ? '1 join' : `${joins} joins`}; ${left} left over`,
  deep: 'Cut each strip deep',
  cloth: 'Cloth to cut them from',
  rows: 'Rows of gathering stitches',
  rowsOf: (first: string, second: string) => `${first} and ${second} from the raw edge`,
  offer: (count: number, ratio: string) =>
    `Or ${count} ${count === 1 ? 'strip' : 'strips'}: ${ratio} times as full`,
  none: 'As long as its edge: nothing is gathered.',
  ease: 'Under 1.2 times it is eased in, hardly gathered: try it on a scrap.',
  bulk: 'Over 3 times is more than cloth is commonly gathered: try it on a scrap, the seam grows thick.',
  littleLeft:
    'Hardly any cloth is left over: measure its usable width again, a little less would take one strip more.',
  thin: (seam: string, apart: string) =>
    `The seam at the top is under ${seam}: both rows lie closer together than ${apart}, inside it.`,
  ruleLess: (count: number, ratio: string) =>
    `A published rule leaves the joins out: ${count} ${count === 1 ? 'strip' : 'strips'}, which come out ${ratio} times as full.`,
  cut: 'Before you cut: measure the edge as it is sewn. Pins come out before the needle reaches them.',
  stripMarks: 'Marks on the strip',
  edgeMarks: 'Marks on the edge',
  mark: 'Mark',
  figure: 'The edge above, its strip below, marks that meet joined',
  partsCount: (count: number) => `${count} parts`,
  source: {
    ratio: says('frill', 'ruffle', 'bias-ruffle', 'span'),
    part: says('frill', 'ruffle', 'span'),
    sample: says('own-sample'),
    strip: 'Derived here: what the strip gives to the edge.',
    cloth: 'Derived here: what all strips of the cloth, joined, give to the edge.',
  },
  rowsSource: says('rows'),
  stripsSource:
    'Strips: each join takes a seam of both (Dress Making, Trade Practical 2, government teaching book, 2024); its ends keep theirs.',
  formula: {
    over: (edge: string, flat: string) => (flat === '' ? edge : `(${edge} − ${flat})`),
    more: (flat: string) => (flat === '' ? '' : ` + ${flat}`),
    ratio: (ratio: string, over: string, more: string, strip: string) =>
      `${ratio} × ${over}${more} = ${strip}. `,
    part: (part: string, over: string, more: string, strip: string) =>
      `${over} ÷ ${part}${more} = ${strip}. `,
    sample: (over: string, flat: string, gathered: string, more: string, strip: string) =>
      `${over} × ${flat} ÷ ${gathered}${more} = ${strip}. `,
    strip: (strip: string, ends: string, flat: string, over: string, ratio: string) =>
      `(${strip}${ends === '' ? '' : ` − 2 × ${ends}`}${flat === '' ? '' : ` − ${flat}`}) ÷ ${over} = ${ratio} times. `,
    cut: (strip: string, ends: string, cut: string) =>
      ends === '' ? '' : `${strip} + 2 × ${ends} = ${cut}.`,
    deep: (deep: string, top: string, hem: string, cut: string) =>
      `${deep} + ${top} + ${hem} = ${cut}. `,
    have: (have: string, deep: string, exact: string, count: number) =>
      `${have} ÷ ${deep} = ${exact}, so ${count}. `,
    joined: (count: number, each: string, seam: string, strip: string) =>
      `${count} × ${each}${seam === '' ? '' : ` + 2 × ${seam}`} = ${strip}. `,
    each: (cloth: string, seam: string) => (seam === '' ? cloth : `(${cloth} − 2 × ${seam})`),
    needs: (cut: string, seam: string) => (seam === '' ? cut : `(${cut} − 2 × ${seam})`),
    strips: (needs: string, each: string, exact: string, count: number) =>
      `${needs} ÷ ${each} = ${exact}, so ${count}. `,
    cloth: (count: number, deep: string, cloth: string) =>
      `${count} × ${deep} = ${cloth} of cloth.`,
  },
};
