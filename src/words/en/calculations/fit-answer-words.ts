import type { EaseQuote } from '../../../sewing/sources/ease.ts';
import type { EaseVerdict } from '../../../sewing/wearer/ease.ts';
import { easeQuotes } from '../published/published-ease-words.ts';

const wanted: Readonly<Record<EaseVerdict, string>> = {
  none: 'finished girth, smaller than the body',
  under: 'finished girth, with little ease',
  disputed: 'finished girth',
  enough: 'finished girth',
  unpublished: 'finished girth',
};

/** What is said of a fit. */
export const fitAnswerWords = {
  wanted,
  smaller: 'smaller than the body',
  lacking: 'lacking all round',
  easeThere: 'of ease there is',
  share: (body: string) =>
    `All pieces together, finished, over ${body} of body: share it out among them; allowances come on top.`,
  gives: (girth: string, asked: string) => `The pieces give ${girth} finished; ${asked} is wanted.`,
  letOut: (each: string, seams: number) =>
    `Let out ${each} on each edge of ${seams === 1 ? 'the seam' : `the ${seams} seams`}: twice that at each seam.`,
  wantedLine: 'Finished girth wanted',
  girthLine: 'The pieces give, finished',
  easeLine: 'Ease there is',
  lessThanBody: (by: string) => `${by} less than the body`,
  lacksLine: 'Against what is wanted',
  lacks: (by: string) => `${by} is lacking`,
  over: (by: string) => `${by} is over`,
  same: 'just as wanted',
  changeLine: 'Seams and darts change it by',
  wider: (by: string) => `${by} wider`,
  narrower: (by: string) => `${by} narrower`,
  edgeLine: 'On each edge of each seam',
  dartLine: 'In each dart',
  out: (by: string) => `let out ${by}`,
  in: (by: string) => `take in ${by}`,
  less: (by: string) => `take up ${by} less`,
  more: (by: string) => `take up ${by} more`,
  offLine: 'It stands off the body',
  off: (by: string) => `${by}, if the ease lies even all round`,
  publishedLine: 'Ease published for this',
  range: (least: string, most: string) => `${least} to ${most}`,
  least: (least: string) => `at least ${least}`,
  or: (ranges: readonly string[]) => ranges.join(' · '),
  littleOrNone: 'little or none: it stretches',
  noneFound: 'none found',

  tooSmall: (by: string) =>
    `It is ${by} smaller than the body: it can’t be closed, unless the cloth stretches.`,
  under: (ease: string, least: string) =>
    `${ease} of ease is less than any source gives for this: ${least} is the least. Close fits are worn so; try it on before anything is cut.`,
  disputed: (ease: string, ranges: string) =>
    `Sources differ: ${ranges}. ${ease} is enough by some of them and not by others.`,
  stretchUnder: (by: string) => `It is ${by} smaller than the body, and has to stretch by that.`,
  tryOn: 'Try it on, basted, before the seams are trimmed: what is cut off can’t be let out.',

  plus: (body: string, ease: string, wanted: string) => `${body} + ${ease} = ${wanted}.`,
  minus: (body: string, less: string, wanted: string) => `${body} − ${less} = ${wanted}.`,
  girthFormula: (terms: string, girth: string) => `${terms} = ${girth}.`,
  takeAway: (one: string, ...others: readonly string[]) => [one, ...others].join(' − '),
  change: (terms: string, seams: number, edge: string, less: boolean) =>
    `${terms} ${less ? '−' : '+'} 2 × ${seams} × ${edge}`,
  dartChange: (terms: string, darts: number, dart: string, less: boolean) =>
    `${terms} ${less ? '−' : '+'} ${darts} × ${dart}`,
  edgeFormula: (lacks: string, seams: number, each: string) =>
    `${lacks} ÷ (2 × ${seams}) = ${each}.`,
  dartFormula: (lacks: string, darts: number, each: string) => `${lacks} ÷ ${darts} = ${each}.`,
  offFormula: (ease: string, pi: string, off: string) => `${ease} ÷ (2 × ${pi}) = ${off}.`,
  practice: 'Common practice, no source.',
  derived: 'Geometry, derived here.',
  says: (quote: EaseQuote) => `${easeQuotes[quote].says}.`,
  source: (quote: EaseQuote) => `${easeQuotes[quote].source}.`,
};
