import type { FacingQuote } from '../../../sewing/sources/facings.ts';
import { turnedWords } from '../common/turned-words.ts';
import { facingQuotes } from '../published/published-facing-words.ts';
import { quoted } from '../published/published-words.ts';

/** A hem finished with a facing. */
export const facingWords = {
  title: 'Faced hem',
  labels: {
    depth: 'Depth, finished',
    kind: 'The facing',
    seam: 'Facing seam',
    turn: 'Free edge, turned',
    edgeStitch: 'Stitch in from edge',
    thickness: 'Cloth thick',
    radius: 'Radius of the curve',
    finished: 'Finished length',
    otherEnd: turnedWords.otherEnd,
    left: 'Cloth below hem line',
    edge: 'Length of the edge',
  },
  kind: { shaped: 'Shaped', bias: 'Bias strip' },
  after: 'to leave for the seam',
  sentence: (seam: string, turn: string) =>
    `Sew the facing on ${seam} from the raw edge, turn it in, press on the seam. Turn its free edge ${turn} under.`,
  unturned: (seam: string) =>
    `Sew the facing on ${seam} from the raw edge, turn it in, press on the seam.`,
  hemLine: 'hem line',
  freeEdge: 'free edge',
  deep: { shaped: 'Cut the facing deep', bias: 'Cut the bias strip wide' },
  long: { shaped: 'Its edge', bias: 'Its length' },
  longOf: {
    shaped: 'the curve of the hem line, on the same grain, and a seam at each end',
    bias: 'as the hem line, and a seam at each end',
  },
  longNumber: (long: string, how: string) => `${long}: ${how}`,
  longFormula: (edge: string, seam: string, long: string) => `${edge} + 2 × ${seam} = ${long}.`,
  longSource: 'Common practice, no source.',
  gives: 'Free edge has to give',
  givesOf: (percent: string) => `${percent} %: lose on an outward curve, gain on an inward one`,
  givesFormula: (depth: string, radius: string, percent: string) =>
    `${depth} ÷ ${radius} = ${percent} %.`,
  givesSource: 'Half of what a hem turned up would have to (geometry, derived here).',
  published: ({ quote }: { quote: FacingQuote }) => `${quoted(facingQuotes[quote])}.`,
};
