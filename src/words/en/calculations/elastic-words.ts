import type { ElasticQuote } from '../../../sewing/sources/elastic.ts';
import { elasticQuotes } from '../published/published-elastic-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly ElasticQuote[]) =>
  `${quotes.map((quote) => quoted(elasticQuotes[quote])).join('; ')}.`;

/** Elastic in a casing. */
export const elasticWords = {
  title: CALCULATION_NAMES.elastic,
  labels: {
    girth: 'Body where it sits',
    by: 'Its length by',
    sampleFlat: 'Sample, flat',
    sampleWorn: 'Stretched till it holds well',
    sampleMost: 'Stretched as far as it goes',
    percent: 'Worn stretch, %',
    there: 'Elastic there is',
    pass: 'Must pass, round',
    round: 'Casing flat, round',
    join: 'Its ends',
    lap: 'Lapped by',
    width: 'Elastic wide',
    ease: 'Casing wider by',
    turn: 'First turn',
    edge: 'Stitched from the inner fold',
    header: 'Header above it',
    thick: 'Elastic thick',
    parts: 'Marks: parts',
  },
  by: {
    sample: 'Own sample',
    percent: 'Stretch in per cent',
    rule: 'Waist less 2 in',
    there: 'Piece that is there',
  },
  join: { lapped: 'Lapped', butted: 'Butted on a patch' },
  notGiven: 'not given',
  noHeader: 'none',
  about: 'about',
  after: 'of elastic to cut',
  sentence: (worn: string, lap: string) =>
    `Stretched by ${worn} % when it is worn. ${lap === '' ? 'Butt its ends on a patch.' : `Lap its ends by ${lap}.`} Thread it, pin the ends, try it on, then cut.`,
  ring: 'Joined, not stretched',
  passing: 'Stretch to pass',
  passingOf: (percent: string, goes: string) =>
    goes === '' ? `${percent} %: try whether it goes so far` : `${percent} %; it goes to ${goes} %`,
  least: 'Shortest that passes',
  rule: 'A published range, cut with its lap',
  ruleOf: (least: string, most: string) => `${least} to ${most}`,
  fullness: 'Casing to body',
  times: (ratio: string) => `${ratio} times`,
  allowance: 'Casing, above the fold',
  stitch: 'Stitch lines, from the fold',
  stitchOf: (header: string, lower: string) => (header === '' ? lower : `${header} and ${lower}`),
  opening: 'Leave open',
  patch: 'Patch under the ends',
  patchOf: (width: string, long: string) => `${width} × ${long}`,
  tooShort: (needs: string, goes: string) =>
    `It has to stretch by ${needs} % to pass and goes to ${goes} %: an opening, a softer elastic or a longer one.`,
  tight: 'Worn it is stretched over half as far as it goes: it may cut in. Try it on.',
  noFullness: 'The casing is no wider than the body: nothing is gathered, and it sits like skin.',
  unknown:
    'The kind of elastic isn’t known to this rule: it is 5 to 15 % of a waist, and would be a third of a wrist. Stretch a sample.',
  tryOn:
    'Try it on before you cut the elastic. A child must be able to breathe and to pull it off.',
  edgeMarks: 'Marks on the casing',
  marks: 'Marks on the elastic',
  mark: 'Mark',
  figure:
    'Section of the casing, layers drawn apart; under it how long each is, by a scale of their own',
  partsCount: (count: number) => `${count} parts`,
  source: {
    sample: 'Own sample; derived here.',
    percent: 'Derived here.',
    rule: says('waist-less'),
    there: 'Derived here.',
  },
  casingSource: `${says('casing-school', 'casing-judged', 'casing-sheet', 'opening', 'patch')} They conflict; it has to be wider by what the elastic is thick (derived here).`,
  formula: {
    sample: (girth: string, flat: string, worn: string, ring: string) =>
      `${girth} × ${flat} ÷ ${worn} = ${ring}. `,
    percent: (girth: string, percent: string, ring: string) =>
      `${girth} ÷ (1 + ${percent} %) = ${ring}. `,
    less: (girth: string, by: string, ring: string) => `${girth} − ${by} = ${ring}. `,
    cut: (ring: string, lap: string, cut: string) =>
      lap === '' ? '' : `${ring} + ${lap} = ${cut}. `,
    stretch: (to: string, ring: string, percent: string) =>
      `(${to} − ${ring}) ÷ ${ring} = ${percent} %. `,
    least: (pass: string, flat: string, most: string, least: string) =>
      `${pass} × ${flat} ÷ ${most} = ${least}. `,
    allowance: (terms: readonly string[], all: string) => `${terms.join(' + ')} = ${all}.`,
  },
};
