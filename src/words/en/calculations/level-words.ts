import { circleQuotes } from '../published/published-circle-words.ts';
import { levelQuotes } from '../published/published-level-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A hem levelled from the floor. */
export const levelWords = {
  title: CALCULATION_NAMES.level,
  labels: {
    heights: 'Raw edge above the floor, place by place',
    hem: 'Finished hem above the floor',
    allowance: 'Turned up for the hem',
    sweep: 'Hem, all round',
  },
  needed: 'one for each place',
  none: 'none',
  notGiven: 'not given',
  about: 'about',
  after: 'most to trim, at one place',
  after0: 'to trim: it is level',
  sentence: (places: number) =>
    `At each of ${places === 1 ? 'its places' : `the ${places} places`} mark what is trimmed up from the raw edge, along the cloth; join the marks smooth, then cut.`,
  place: (i: number) => `Place ${i}: trim`,
  lacking: (i: number) => `Place ${i}: lacks`,
  lowest: 'Lowest hem that all places reach',
  places: 'Places to measure at',
  placesOf: (fewest: number, most: number) => `${fewest} to ${most}, evenly round`,
  lacks: (lowest: string) =>
    `There is too little cloth at a place: raise the hem to ${lowest}, turn up less, or face it.`,
  offer: (lowest: string) => `Or the lowest hem: ${lowest}`,
  hangs: `Hang it first: ${quoted(circleQuotes.hang)}. Wear the shoes, stand still; someone else measures.`,
  before: 'Pin the hem up and try it on before you cut: what is trimmed is gone.',
  figure:
    'The raw edge laid out place by place above the floor, the line it is cut at, and the hem',
  source: `Derived here. Places: ${quoted(levelQuotes.pins)}.`,
  formula: {
    trim: (hem: string, allowance: string, height: string, trim: string) =>
      `${hem}${allowance === '' ? '' : ` − ${allowance}`} − ${height} = ${trim}. `,
    lowest: (height: string, allowance: string, lowest: string) =>
      `${height}${allowance === '' ? '' : ` + ${allowance}`} = ${lowest}, the lowest.`,
  },
};
