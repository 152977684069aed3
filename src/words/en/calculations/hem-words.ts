import type { HemQuote } from '../../../sewing/sources/hems.ts';
import { clothEaseWords } from '../common/cloth-ease-words.ts';
import { turnedWords } from '../common/turned-words.ts';
import { hemQuotes } from '../published/published-hem-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const labels = {
  depth: 'Depth, finished',
  given: 'That is',
  style: 'Turned',
  turn: 'First turn',
  edgeStitch: 'Stitch in from fold',
  thickness: 'Cloth thick',
  finished: 'Finished length',
  otherEnd: turnedWords.otherEnd,
  left: 'Cloth below hem line',
  shape: 'The hem line',
  chord: 'Across the curve',
  rise: 'Rise of the curve',
  round: 'Round the hem line',
  above: 'Round, higher up',
  apart: 'Higher up by',
  cloth: 'The cloth eases in',
  ease: 'Eases in, per cent',
  taper: 'Sleeve or leg',
  atHem: 'Across at the hem line',
  acrossAbove: 'Across, higher up',
};

/** A hem: what is turned up, pressed and stitched. */
export const hemWords = {
  title: CALCULATION_NAMES.hem,
  faced: 'Face it instead',
  corner: 'Vent or corner',
  labels,
  given: { depth: 'Depth, finished', all: 'All, turns too' },
  /** The depth's own label when all there is to turn up is given instead. */
  allFor: 'All for the hem',
  style: {
    single: 'Once',
    double: 'Twice, equally',
    unequal: 'Twice, first less',
    narrow: 'Narrow, twice',
  },
  shape: {
    straight: 'Straight',
    rise: 'Curve, by its rise',
    readings: 'Curve, two readings',
    inward: 'Curve, inward',
  },
  cloth: clothEaseWords,
  taper: { none: 'Straight', taper: 'Tapered' },
  asDeep: 'depth of the hem',
  after: 'to turn up',
  press: (first: string | undefined, hemLine: string) =>
    `${first === undefined ? 'Press' : `Press ${first} from the raw edge, then`} ${hemLine} from the raw edge.`,
  pressByEye: (turn: string, hemLine: string) =>
    `Turn the raw edge ${turn} under by eye: your tape has no line there. Then press ${hemLine} from where it was.`,
  fold: 'fold',
  innerFold: 'inner fold',
  rawEdge: 'raw edge',
  chalk: 'Chalk lines to fold to',
  chalkOf: (first: string | undefined, second: string) =>
    first === undefined
      ? `${second} from the raw edge`
      : `${first} from the raw edge, then ${second} from the fold`,
  usual: 'Usual depths',
  usualSkirts: 'Usual on skirts',
  usualOf: ({ quote }: { quote: HemQuote }) => quoted(hemQuotes[quote]),
  classLabel: 'By its depth',
  hemClass: {
    rolled: 'a rolled hem',
    narrow: 'a narrow hem',
    ordinary: 'an ordinary hem',
    deep: 'a deep hem',
  },
  notNarrow: (narrow: string) =>
    `This is no narrow hem any more: that is up to ${narrow} deep. Make it less, or turn it otherwise.`,
  narrowAsUsual: (depth: string) => `Make it ${depth}, and ${depth} turned in`,
  radius: 'Radius of the curve',
  straight: 'straight, as good as',
  fullness: 'Inner fold has to lose',
  stretch: 'Inner fold has to gain',
  fullnessOf: (percent: string, excess: string | undefined) =>
    excess === undefined ? `${percent} %` : `${percent} %, ${excess} in all`,
  deepest: 'Deepest that lies flat',
  tooFull: (percent: string, takes: string, deepest: string) =>
    `This will not lie flat: ${percent} % to lose, the cloth takes about ${takes} %. Make it ${deepest} deep or less, or face it.`,
  inward: (percent: string) =>
    `An inward curve is too short when turned up: stretch the edge by ${percent} %, or clip it, or face it.`,
  shallower: (depth: string) => `Make it ${depth} deep`,
  widths: 'Cut the allowance across',
  widthsOf: (depth: string, raw: string) => `${depth} at the inner fold, ${raw} at the raw edge`,
  curveFormula: (depth: string, radius: string, percent: string) =>
    `2 × ${depth} ÷ ${radius} = ${percent} %.`,
  curveSource: 'Geometry, derived here; what a cloth takes is common practice, no source.',
  source: ({ quote }: { quote: HemQuote }) => `Sum and chalk lines: ${hemQuotes[quote].source}.`,
};
