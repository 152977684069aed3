import type { Finish, Row } from '../../../sewing/seams/seam-rows.ts';
import type { SeamQuote } from '../../../sewing/sources/seams.ts';
import { seamQuotes } from '../published/published-seam-words.ts';
import { quoted } from '../published/published-words.ts';

const labels = {
  what: 'What',
  given: 'Pattern gives',
  finish: 'Finish',
  first: 'First row from the edge',
  trim: 'Trim to',
  second: 'Second row',
  under: 'Trim under layer to',
  laid: 'Under layer',
  turn: 'Turn upper under',
  allowance: 'Allowance',
  wanted: 'Allowance wanted',
  seams: 'Seams all round',
  way: 'Change',
  change: 'By, all round',
  radius: 'Radius of the curve',
  opening: 'A clip may open',
  top: 'Topstitched beside it',
  topSecond: 'Second row, topstitched',
  along: 'Length of the curve',
  edge: 'Length of the edge',
};

const finishes: Readonly<Record<Finish, string>> = {
  plain: 'Plain, overcast',
  french: 'French',
  felled: 'Flat-felled',
  'mock-french': 'Mock French',
  bound: 'Bound',
  graded: 'Enclosed, graded',
};

const ROWS: Readonly<Record<Row['do'], (at: string, beside: string) => string>> = {
  sew: () => 'Sew, right sides together, on the stitch line',
  'sew-first': (at, beside) =>
    `Sew the first row, wrong sides together, ${beside} from the raw edge (${at} outside the stitch line)`,
  'sew-second': () => 'Sew the second row on the stitch line',
  trim: (at) => `Trim to ${at} from the stitch line`,
  'trim-first': (at, beside) => `Trim to ${beside} from the first row (${at} from the stitch line)`,
  'trim-under': (at) => `Trim the under layer to ${at} from the stitch line`,
  'trim-inner': (at) => `Trim the inner layer to ${at} from the stitch line`,
  'lay-in': (at, beside) =>
    `Lay the under layer back from the upper one’s raw edge by ${beside}: its own is ${at} from the stitch line`,
  overcast: () => 'Overcast or zigzag each edge (ISO 4915: 503, 504 or 304)',
  'press-open': () => 'Press the allowances open',
  topstitch: (at) => `Topstitch ${at} from the seam, on both sides, from the right side`,
  turn: (at) =>
    `Turn right sides together, press the first row to the edge, ${at} from the stitch line`,
  'turn-under': (at) => `Turn the upper layer under; its fold is ${at} from the stitch line`,
  'press-half': (at) =>
    `Press each allowance in half to the middle; the fold is ${at} from the stitch line`,
  'edge-stitch': (at) => `Edge-stitch the folds together, ${at} from the stitch line`,
  'fell-stitch': (at) => `Stitch the fold down, ${at} from the seam`,
  bind: (at, beside) =>
    `Stitch the bias strip on ${beside} from the raw edge (${at} from the stitch line); wrap it round and stitch again`,
  enclose: () => 'Turn and press, the widest layer to the outside',
};

/** Seam allowances: what a finish takes, changes, curves. */
export const seamWords = {
  title: 'Seam allowance',
  labels,
  what: {
    finish: 'A finish',
    change: 'Another allowance',
    girth: 'Let out or take in',
    curve: 'Clips on a curve',
  },
  finish: finishes,
  laid: { even: 'As wide, trimmed after', inset: 'Cut narrower, laid in' },
  underTakes: 'Under layer takes',
  way: { out: 'Let out', in: 'Take in' },
  row: (row: Row, at: string, beside: string) => ROWS[row.do](at, beside),
  step: (number: number) => `${number}.`,
  taken: 'taken on each edge',
  fits: (finish: string, spare: string | undefined) =>
    spare === undefined
      ? `${finish}: takes the allowance just as it is.`
      : `${finish}: ${spare} of the allowance is left over: trim it off first.`,
  over: (finish: string, over: string, girth: string) =>
    `${finish} takes ${over} more than the pattern gives on each edge: ${girth} of the girth is lost at each seam. Cut a wider allowance, or sew narrower rows.`,
  overShort: (finish: string) => `${finish}: does not fit this allowance.`,
  turnTooWide: (turn: string, room: string, most: string) =>
    `${turn} turned under is wider than the ${room} between fold and seam: its raw edge has nowhere to lie. Turn under ${most} at most.`,
  guide: 'Guide the raw edge',
  guideAt: (mm: string, inches: string) => `${mm} or ${inches} from the needle`,
  plate: 'Nearest line of the plate (common practice, no source)',
  plateOn: (line: string) => `${line}, just on it`,
  plateBeside: (line: string, off: string, past: boolean) =>
    `${line}; keep the edge ${off} ${past ? 'past it, away from the needle' : 'short of it, towards the needle'}`,
  strip: 'Cut the bias strip',
  trimEach: 'to trim from each edge',
  addEach: 'to add to each edge',
  same: 'nothing to change',
  changeSentence: (wanted: string) => `Mark the stitch line ${wanted} from the new raw edge.`,
  sameSentence: 'The pattern has this allowance already.',
  girthIf: 'Sewn so without recutting, the girth changes by',
  wider: (length: string) => `${length} wider`,
  narrower: (length: string) => `${length} narrower`,
  perEdge: 'on each edge of each seam',
  letOutSentence: (left: string) =>
    `Sew that much nearer to the raw edge; ${left} of the allowance is left.`,
  takeInSentence: (left: string) => `Sew that much further in; the allowance is then ${left}.`,
  fromHere: 'apart at most',
  notGiven: 'not given',
  none: 'none',
  clip: 'Clip',
  clips: 'Clips',
  clipsOf: (count: number) => (count === 0 ? 'none needed' : `${count}, evenly`),
  deep: 'Cut each from the raw edge, at most',
  byOpening: 'By what a clip may open',
  publishedClips: 'Published',
  publishedLesser: 'The published spacing is the lesser here.',
  openingLesser: 'What a clip may open asks for this.',
  differs: 'Raw edge longer (or shorter, inward) by',
  clipSentence: (short: string, lesser: string) =>
    `Clip (or notch, outward) no further apart, and stop ${short} short of the stitching. ${lesser}`,
  published: ({ quote }: { quote: SeamQuote }) => `${quoted(seamQuotes[quote])}.`,
  derived: 'Geometry, derived here.',
  plainSource:
    'Finished and pressed open as wide as it is: trimming is for enclosed seams (common practice, no source).',
  foldFormula: (given: string, turn: string, left: string) =>
    `${given} − ${turn} = ${left} from the stitch line.`,
  halfFormula: (given: string, half: string) => `${given} ÷ 2 = ${half}.`,
  sumFormula: (first: string, second: string, consumed: string) =>
    `${first} + ${second} = ${consumed}.`,
  changeFormula: (pattern: string, wanted: string, each: string) =>
    `${pattern} − ${wanted} = ${each} on each edge.`,
  girthFormula: (change: string, seams: number, each: string) =>
    `${change} ÷ (2 × ${seams}) = ${each}.`,
  clipFormula: (opening: string, radius: string, allowance: string, spacing: string) =>
    `${opening} × ${radius} ÷ ${allowance} = ${spacing}.`,
  section: 'The seam in section, layers drawn apart',
};
