import type { ShareQuote } from '../../../sewing/sources/shares.ts';
import { shareQuotes } from '../published/published-share-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A place that takes a share: one of it in a sentence, several of it, and what is asked. */
interface Place {
  one: string;
  many: string;
}

const places = {
  sides: { one: 'side seam edge', many: 'side seam edges' },
  frontDarts: { one: 'front dart', many: 'front darts' },
  backDarts: { one: 'back dart', many: 'back darts' },
  frontEdges: { one: 'centre front edge', many: 'centre front edges' },
  backEdges: { one: 'centre back edge', many: 'centre back edges' },
  panelEdges: { one: 'panel seam edge', many: 'panel seam edges' },
  above: { one: 'line above', many: 'lines above' },
  below: { one: 'line below', many: 'lines below' },
  hem: { one: 'hem edge', many: 'hem edges' },
} satisfies Record<string, Place>;

/** A change of girth or length shared over seams, darts and lines. */
export const sharesWords = {
  title: CALCULATION_NAMES.shares,
  labels: {
    what: 'What changes',
    change: 'By, in all',
    way: 'It becomes',
    step: 'In whole',
    sides: 'Side seam edges',
    sidesShare: 'Each side edge, %',
    frontDarts: 'Front darts',
    frontDartsShare: 'Each front dart, %',
    backDarts: 'Back darts',
    backDartsShare: 'Each back dart, %',
    frontEdges: 'Centre front edges',
    frontEdgesShare: 'Each of them, %',
    backEdges: 'Centre back edges',
    backEdgesShare: 'Each of them, %',
    panelEdges: 'Panel seam edges',
    panelEdgesShare: 'Each panel edge, %',
    aboveShare: 'Above waist or elbow, %',
    belowShare: 'Below it, %',
    hemShare: 'At the hem, %',
    allowance: 'Allowance there is',
  },
  what: { girth: 'A girth', length: 'A length' },
  way: {
    girth: { in: 'Narrower', out: 'Wider' },
    length: { in: 'Shorter', out: 'Longer' },
  },
  places: places as Readonly<Record<keyof typeof places, Place>>,
  none: 'none',
  notGiven: 'not given',
  about: 'about',
  onEach: (place: string) => `on each ${place}`,
  nothing: 'changes anywhere: it is less than half a step',
  sentence: {
    girth: {
      in: 'Move each stitch line in by its share; a dart takes up that much more. Whatever crosses them changes alike: waistband, armhole, facing, hem.',
      out: 'Move each stitch line out by its share; a dart takes up that much less. Whatever crosses them changes alike: waistband, armhole, facing, hem.',
    },
    length: {
      in: 'Fold each line by its share, square to the grain, and draw the edges anew across it.',
      out: 'Cut along each line, spread it by its share, square to the grain, and draw the edges anew across it.',
    },
  },
  each: (place: string) => `Each ${place}`,
  eachOf: (length: string, count: number, all: string) =>
    count === 1 ? length : `${length}, ${count} of them: ${all}`,
  left: 'Left over',
  leftOf: (length: string, over: boolean) =>
    over ? `${length} more than is wanted` : `${length} still to be changed`,
  leftWarning: (length: string, over: boolean) =>
    over
      ? `${length} too much: give it back at one place alone, as the centre back.`
      : `${length} is left: take it at one place alone, as the centre back, or one side.`,
  much: (place: string, seam: string) =>
    `${seam} at one seam is much for its line (${place}, both edges together; common practice, no source): take more in darts, or add one.`,
  lacks: (place: string, each: string, there: string) =>
    `Each ${place} is to move out by ${each}, and ${there} of allowance is there: too little cloth.`,
  before: 'Baste and try it on before any cloth is cut off.',
  counted: (count: number, place: Place) => `${count} ${count === 1 ? place.one : place.many}`,
  figure: 'The whole change in a line, share after share',
  formula: {
    share: (change: string, percent: string, share: string) =>
      `${change} × ${percent} % = ${share}.`,
    all: (terms: readonly string[], sum: string) => `${terms.join(' + ')} = ${sum}.`,
    times: (count: number, each: string) => `${count} × ${each}`,
  },
  derived:
    'In whole steps, both sides alike, as near to the shares as their number lets it (derived here).',
  published: ({ quote }: { quote: ShareQuote }) => `${quoted(shareQuotes[quote])}.`,
};
