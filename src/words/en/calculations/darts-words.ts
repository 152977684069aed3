import { dartQuotes } from '../published/published-dart-words.ts';
import { shareQuotes } from '../published/published-share-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** What seams and darts take between two girths. */
export const dartsWords = {
  title: CALCULATION_NAMES.darts,
  labels: {
    larger: 'Larger girth, eased',
    smaller: 'Smaller girth, eased',
    sides: 'Side seam edges',
    sidesShare: 'Each side edge, %',
    frontDarts: 'Front darts',
    frontDartsShare: 'Each front dart, %',
    frontLong: 'Front dart long',
    backDarts: 'Back darts',
    backDartsShare: 'Each back dart, %',
    backLong: 'Back dart long',
    step: 'In whole',
    levels: 'Levels between, below the smaller',
    girths: 'Girth at each level',
    legs: 'Legs of darts',
  },
  long: 'Long, edge to point',
  legs: { straight: 'Straight, seams take the rest', curved: 'Curved, each its share' },
  none: 'none',
  notGiven: 'not given',
  one: { sides: 'side seam edge', frontDarts: 'front dart', backDarts: 'back dart' },
  many: { sides: 'side seam edges', frontDarts: 'front darts', backDarts: 'back darts' },
  onEach: (place: string) => `at each ${place}`,
  nothing: 'anywhere: it is less than half a step',
  sentence:
    'Mark each so wide on the stitch line of the smaller girth. Legs of a dart are equal; baste, try it on, then sew.',
  intake: 'Taken in all',
  each: (place: string) => `Each ${place}`,
  eachOf: (width: string, count: number, all: string) =>
    count === 1 ? width : `${width}, ${count} of them: ${all}`,
  angle: (place: string) => `Each ${place}, angle`,
  degrees: (angle: string) => `${angle}°`,
  left: 'Left over',
  leftOf: (length: string, over: boolean) =>
    over ? `${length} more than is wanted` : `${length} still to be taken`,
  levelMarks: 'Levels, down from the smaller girth',
  levelMark: 'Level',
  level: (at: string) => `At ${at} below`,
  levelOf: (places: readonly string[]) => places.join(', '),
  levelOne: (place: string, width: string) => `${place} ${width}`,
  leftWarning: (length: string, over: boolean) =>
    over
      ? `${length} too much: give it back at one place alone, as the centre back.`
      : `${length} is left: take it at one place alone, as the centre back, or one side.`,
  tiny: (place: string) =>
    `Each ${place} is so narrow that it is better eased in (common practice, no source).`,
  pointed: (place: string) =>
    `Each ${place} is over 30° at its point, which stands out: make it longer, or more of them.`,
  before: 'Baste and try it on before any cloth is cut off.',
  counted: (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`,
  figure:
    'Both girths in a line, cut short at their beginning; below them what each takes, first darts as they are',
  source: `${quoted(dartQuotes.control)}; ${quoted(dartQuotes.legs)}.`,
  shares: `${quoted(shareQuotes['hip-to-waist'])}. In whole steps, both sides alike (derived here).`,
  formula: {
    intake: (larger: string, smaller: string, intake: string) =>
      `${larger} − ${smaller} = ${intake}. `,
    share: (intake: string, percent: string, share: string) =>
      `${intake} × ${percent} % = ${share}. `,
    all: (terms: readonly string[], sum: string) => `${terms.join(' + ')} = ${sum}. `,
    times: (count: number, each: string) => `${count} × ${each}`,
    narrowed: (width: string, long: string, at: string, there: string) =>
      `${width} × (${long} − ${at}) ÷ ${long} = ${there}. `,
    rest: (intake: string, terms: readonly string[], count: number, each: string) =>
      `(${[intake, ...terms].join(' − ')}) ÷ ${count} edges = ${each}. `,
  },
};
