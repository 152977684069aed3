import type { CordQuote } from '../../../sewing/sources/cords.ts';
import { cordQuotes } from '../published/published-cord-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly CordQuote[]) =>
  `${quotes.map((quote) => quoted(cordQuotes[quote])).join('; ')}.`;

/** A drawstring and its casing. */
export const cordWords = {
  title: CALCULATION_NAMES.cord,
  labels: {
    who: 'Worn by',
    widest: 'Channel, widest',
    by: 'Given',
    free: 'Free at each end',
    there: 'Cord there is',
    thick: 'Cord thick',
    knot: 'Knot, each end',
    turn: 'First turn',
    edge: 'Stitched from the inner fold',
    header: 'Header above the cord',
  },
  who: { grown: 'A grown-up', child: 'A child' },
  by: { free: 'Free ends', there: 'Cord that is there' },
  none: 'none',
  about: 'about',
  after: 'of cord to cut',
  sentence: (free: string) =>
    `${free} is free at each end when the channel lies at its widest. Stitch the cord fast at the middle, opposite its ends.`,
  slips:
    'The cord is shorter than its channel: its ends slip in unless it is stitched fast at the middle back.',
  free: 'Free at each end, at its widest',
  clear: 'Casing flat, clear',
  allowance: 'Casing, above the fold',
  stitch: 'Stitch line, from the fold',
  stitchOf: (header: string, lower: string) => (header === '' ? lower : `${header} and ${lower}`),
  most: 'Limits for children, each end',
  mostOf: (us: string, eu: string) => `${us} (United States), ${eu} (Europe)`,
  cords: 'Cord that keeps to them',
  cordsOf: (us: string, eu: string) => `${us}; ${eu}`,
  over: (limit: string) =>
    `For a child each end is longer than ${limit}: it can catch and strangle. Shorten it.`,
  knots: 'For a child no knots or toggles at the free ends.',
  never: 'At the hood or neck of a child: no cord. Take elastic, a button or a snap.',
  figure:
    'Section of the casing, layers drawn apart; under it the cord over its channel, to a scale of their own',
  source: says('casing'),
  childSource: `${says('child-us', 'child-eu')} Follow your local rules and ask a qualified tester: nothing here says that a garment is safe.`,
  formula: {
    rule: (thick: string, clear: string, more: string) => `${thick} + ${more} = ${clear}. `,
    round: (pi: string, thick: string, clear: string) => `${pi} × ${thick} ÷ 2 = ${clear}. `,
    allowance: (terms: readonly string[], all: string) => `${terms.join(' + ')} = ${all}. `,
    cord: (widest: string, free: string, knot: string, cut: string) =>
      `${widest} + 2 × ${free}${knot === '' ? '' : ` + 2 × ${knot}`} = ${cut}.`,
    free: (cut: string, widest: string, knot: string, free: string) =>
      `(${cut} − ${widest}) ÷ 2${knot === '' ? '' : ` − ${knot}`} = ${free}.`,
  },
};
