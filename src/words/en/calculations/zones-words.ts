import { gatherQuotes } from '../published/published-gather-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** An edge that is gathered in places, or more in some than in others. */
export const zonesWords = {
  title: CALCULATION_NAMES.zones,
  even: 'Gathered all along',
  labels: {
    zones: 'Edge, zone by zone',
    ratios: 'Times as full, zone by zone (1 lies flat)',
    parts: 'Parts of a gathered zone',
    by: 'Given',
    strip: 'Strip there is',
    ends: 'Each end of the strip',
  },
  by: { ratio: 'How full', strip: 'Strip that is there' },
  needed: 'one for each zone',
  none: 'none',
  about: 'about',
  after: 'of strip to cut, in one length',
  sentence:
    'Mark both where zones meet and in parts between, pin mark to mark, draw up only what is to be gathered.',
  zone: (i: number, long: string) => `Zone ${i}, ${long}`,
  takes: (long: string, times: string) => `takes ${long}, ${times} times`,
  edge: 'Edge in all',
  nothing: 'Every zone lies flat: nothing is gathered.',
  ease: 'A zone under 1.2 times is eased in, hardly gathered: try it on a scrap.',
  measure: 'Measure the edge zone by zone as it is sewn before you cut.',
  stripMarks: 'Marks on the strip',
  edgeMarks: 'Marks on the edge',
  mark: 'Mark',
  figure: 'The edge above, its strip below, marks that meet joined',
  source: `Each zone: ${quoted(gatherQuotes.frill)}; their sum is derived here.`,
  sourceStrip:
    'Derived here: flat zones take their own length, the rest goes to the others in the proportion given; here of the first that is gathered.',
  formula: {
    term: (ratio: string, zone: string) => `${ratio} × ${zone}`,
    sum: (terms: readonly string[], ends: string, cut: string) =>
      `${terms.join(' + ')}${ends === '' ? '' : ` + 2 × ${ends}`} = ${cut}.`,
    scaled: (
      ratio: string,
      cut: string,
      ends: string,
      flat: string,
      terms: readonly string[],
      full: string,
    ) =>
      `${ratio} × (${cut}${ends === '' ? '' : ` − 2 × ${ends}`}${flat === '' ? '' : ` − ${flat}`}) ÷ (${terms.join(' + ')}) = ${full} times.`,
  },
};
