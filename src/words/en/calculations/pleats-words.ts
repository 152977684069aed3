import type { PleatQuote } from '../../../sewing/sources/pleats.ts';
import { pleatQuotes } from '../published/published-pleat-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** What is pleated, in a sentence. */
const kinds = { knife: 'Knife', box: 'Box', inverted: 'Inverted' };

/** How the lines of each are folded. */
const folding: Readonly<Record<keyof typeof kinds, string>> = {
  knife: 'Lay each fold line on the placement line after it.',
  box: 'Lay each fold line on the placement line beside it, so that the folds turn away from each other.',
  inverted: 'Lay both fold lines of a pleat on the placement line between them.',
};

/** Pleats over a finished width. */
export const pleatsWords = {
  title: CALCULATION_NAMES.pleats,
  labels: {
    finished: 'Finished width',
    there: 'Strip there is',
    kind: 'Pleats',
    by: 'Given',
    width: 'Width of one',
    count: 'How many',
    depth: 'Depth of a fold',
    face: 'Front of a box',
    ends: 'First fold',
    flat: 'Left flat',
    seam: 'Seam, each end',
    lower: 'Across, lower down',
    edge: 'Across, lower edge',
    cloth: 'Cloth wide',
    deep: 'Strip cut deep',
  },
  kinds,
  by: { width: 'Width of one', count: 'Number', strip: 'Strip that is there' },
  ends: { fold: 'A width from the seam', half: 'Half a width' },
  noFlat: 'nothing',
  twice: 'twice the depth',
  notGiven: 'not given',
  about: 'about',
  after: 'of strip to cut',
  afterFolded: 'wide when it is pleated',
  sentence: (count: number, kind: keyof typeof kinds, width: string, half: string, flat: string) =>
    `${count} ${kinds[kind].toLowerCase()} ${count === 1 ? 'pleat' : 'pleats'}, one every ${width}${half === '' ? '' : `, the first fold ${half} from the seam`}${flat === '' ? '' : `, then ${flat} flat`}. Mark every line from the same cut end. ${folding[kind]}`,
  corrected: (wanted: string) => `, not ${wanted}`,
  one: 'Width of one',
  away: 'In the folds',
  seams: 'Seams, in it',
  seamsOf: (length: string) => (length === '' ? 'none: add them' : `${length} at each end`),
  between: 'From box to box',
  touching: 'nothing: they touch',
  strips: 'Strips across the cloth',
  stripsOf: (count: number, joins: number, left: string) =>
    `${count}, ${joins === 0 ? 'no join' : joins === 1 ? '1 join' : `${joins} joins`}; ${left} left over`,
  cloth: 'Cloth to cut them from',
  offer: (count: number, width: string, cut: string) => `Or ${count}, each ${width}: strip ${cut}`,
  layers: (most: number) =>
    `Deeper than one is wide: up to ${most} layers lie over each other. Try a few on a scrap and press them first.`,
  past: (past: string) =>
    `The first fold reaches ${past} past the seam. In a ring it goes on under what comes before; at an end, make it less deep or catch it in the seam.`,
  levelOf: (depth: string, width: string) => `each fold ${depth} deep, one every ${width}`,
  open: 'as wide as the strip: no fold there, the pleats hang open',
  levelLines: { lower: 'Lines on the strip, lower down', edge: 'Lines on the strip, lower edge' },
  levelOverlap: (level: string) =>
    `${level}: the folds lie over each other there. Try one on a scrap and press it first.`,
  levelSource: `${quoted(pleatQuotes['fitted-level'])}. Between levels the lines are straight.`,
  overlap: 'The folds lie over each other behind: try one on a scrap and press it first.',
  alone: 'One pleat alone: see that it lies where you want it.',
  littleLeft:
    'Hardly any cloth is left over: measure its usable width again, a little less would take one strip more.',
  cut: 'Before you cut: measure what the pleats are sewn to. Before you press: fold, pin and measure across. Pins come out before needle and iron reach them.',
  line: 'Line',
  lines: 'Lines on the strip',
  figure: (shown: number) =>
    `The strip above, folded below, ${shown === 1 ? 'one pleat' : `the first ${shown}`} to scale, layers drawn apart`,
  figureAll: 'The strip above, folded below',
  figureFirst: 'The first pleats, the strip above, folded below; under them all of both',
  counted: (count: number) => `${count} ${count === 1 ? 'pleat' : 'pleats'}`,
  published: ({ quote }: { quote: PleatQuote }) => `${quoted(pleatQuotes[quote])}.`,
  stripsSource:
    'Strips: each join takes a seam of both (Dress Making, Trade Practical 2, government teaching book, 2024).',
  formula: {
    count: (over: string, wanted: string, exact: string, count: number) =>
      `${over} ÷ ${wanted} = ${exact}, so ${count}. `,
    over: (finished: string, flat: string) => (flat === '' ? finished : `(${finished} − ${flat})`),
    width: (over: string, count: number, width: string) => `${over} ÷ ${count} = ${width} each. `,
    strip: (
      finished: string,
      count: number,
      takes: number,
      depth: string,
      seam: string,
      cut: string,
    ) =>
      `${finished} + ${count} × ${takes} × ${depth}${seam === '' ? '' : ` + 2 × ${seam}`} = ${cut}.`,
    inStrip: (
      strip: string,
      width: string,
      takes: number,
      depth: string,
      exact: string,
      count: number,
    ) => `${strip} ÷ (${width} + ${takes} × ${depth}) = ${exact}, so ${count}. `,
    comesTo: (
      there: string,
      count: number,
      takes: number,
      depth: string,
      seam: string,
      finished: string,
    ) =>
      `${there} − ${count} × ${takes} × ${depth}${seam === '' ? '' : ` − 2 × ${seam}`} = ${finished}. `,
    level: (strip: string, across: string, count: number, takes: number, depth: string) =>
      `(${strip} − ${across}) ÷ (${count} × ${takes}) = ${depth}.`,
    strips: (strip: string, each: string, exact: string, count: number) =>
      `${strip} ÷ ${each} = ${exact}, so ${count}. `,
    left: (count: number, each: string, strip: string, left: string) =>
      `${count} × ${each} − ${strip} = ${left} left over.`,
    cloth: (count: number, deep: string, cloth: string) =>
      ` ${count} × ${deep} = ${cloth} of cloth.`,
    each: (cloth: string, seam: string) => (seam === '' ? cloth : `(${cloth} − 2 × ${seam})`),
  },
};
