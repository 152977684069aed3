import { bandQuotes } from '../published/published-band-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Waistbands and cuffs. */
export const bandWords = {
  title: CALCULATION_NAMES.band,
  labels: {
    what: 'It is a',
    girth: 'Girth it goes round',
    ease: 'Ease',
    opens: 'Opens at',
    overlap: 'Overlap past the middle',
    underlap: 'Underlap past the middle',
    pass: 'Has to pass (hand, hips)',
    wide: 'Width as it shows',
    make: 'Cut',
    seam: 'Seam, ends and edges',
    interfaced: 'Interfacing',
    edge: 'Edge it is sewn to',
    front: 'Of it in front, side to side',
    thickness: 'Thickness of the cloth',
    cloth: 'Cloth there is along it',
  },
  what: { waist: 'Waistband', cuff: 'Cuff' },
  opens: { back: 'Back middle', front: 'Front middle', side: 'Side', ring: 'Nowhere, a ring' },
  make: { fold: 'In one, folded', two: 'In two', back: 'Folded back, double' },
  interfaced: { half: 'One half', whole: 'All of it', none: 'None' },
  none: 'none',
  flush: 'none, ends flush',
  notGiven: 'not given',
  half: 'half',
  longEnough: 'long enough',
  about: 'about',
  after: 'long to cut',
  sentence: (across: string, count: number) =>
    `${count === 1 ? 'Cut it' : 'Cut two of it, each'} ${across} wide, lengthwise of the cloth. Interface it, mark it, press its fold, then sew it to its edge mark to mark.`,
  finished: 'From finished end to finished end',
  round: 'Round, with ease',
  interfacing: 'Interfacing, without seams',
  sizeOf: (long: string, wide: string) => `${long} × ${wide}`,
  twice: (size: string) => `${size}, twice`,
  takeUp: 'Edge to take up',
  pieces: 'In pieces',
  piecesOf: (count: number, long: string) =>
    `${count}, each ${long} long, joined at a side where that can be`,
  fold: 'Its fold takes',
  less: (length: string) => `${length} less`,
  shorter: (by: string) =>
    `The edge is ${by} shorter than the band: the band would be gathered, or the edge stretched.`,
  tight: (least: string, quote: string) => `Less ease than ${least}: ${quote}.`,
  laps: (least: string, most: string) => `The underlap is not ${least} to ${most}, as published.`,
  noPass: 'Measure what it has to pass: a ring that is too small can’t be put on.',
  holes:
    'Buttonholes of a cuff that is folded back go through four layers, all at the same place from its end.',
  before: 'Try the edge on, pinned, before you cut the band: it sets the girth.',
  marks: 'Sides and middles',
  mark: 'Mark',
  figure: 'The band flat, with its seams and its marks',
  source: `${quoted(bandQuotes.wide)}; ${quoted(bandQuotes.underlap)}. Interfacing without seams: common practice, no source.`,
  formula: {
    long: (terms: readonly string[], seam: string, long: string) =>
      `${terms.join(' + ')}${seam === '' ? '' : ` + 2 × ${seam}`} = ${long}. `,
    across: (times: number, wide: string, seam: string, folded: string, across: string) =>
      `${times} × ${wide}${seam === '' ? '' : ` + 2 × ${seam}`}${folded === '' ? '' : ` − ${folded}`} = ${across}. `,
    takeUp: (edge: string, round: string, taken: string) => `${edge} − ${round} = ${taken}. `,
    pieces: (long: string, seams: string, cloth: string, exact: string, count: number) =>
      `(${long} − ${seams}) ÷ (${cloth} − ${seams}) = ${exact}, so ${count}. `,
  },
};
