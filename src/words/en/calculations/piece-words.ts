import type { PieceQuote } from '../../../sewing/sources/pieces.ts';
import { pieceQuotes } from '../published/published-piece-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A piece of a garment: its finished size, what its edges take, what is cut. */
export const pieceWords = {
  title: CALCULATION_NAMES.piece,
  labels: {
    width: 'Finished width',
    length: 'Finished length',
    top: 'Top edge takes',
    bottom: 'Bottom edge takes',
    side: 'Each side takes',
    otherSide: 'Other side takes',
    fold: 'Cut',
    sides: 'The two sides',
    count: 'How many',
    pairs: 'They are',
    given: 'Given',
    wantedWidth: 'Wanted finished width',
    wantedLength: 'Wanted finished length',
    angle: 'Corner of bottom and side, °',
    slants: 'Edges slant',
    topFalls: 'Top falls by',
    topOver: 'Top: over a width of',
    bottomRises: 'Bottom rises by',
    bottomOver: 'Bottom: over a width of',
    sideLeans: 'Each side leans in by',
    sideOver: 'Sides: over a length of',
    otherLeans: 'Other side leans in by',
    otherOver: 'Other: over a length of',
    shrinksAcross: 'Shrinks across, %',
    shrinksAlong: 'Shrinks along, %',
    cloth: 'Cloth wide',
    adds: 'Allowances add',
    topAdds: 'Top edge adds to',
    bottomAdds: 'Bottom edge adds to',
    sideAdds: 'Each side adds to',
    otherAdds: 'Other side adds to',
  },
  slants: { angle: 'By that corner, or not', own: 'Each by two measures' },
  isLevel: 'level',
  upright: 'upright',
  topFromFold: 'Top falls from fold by',
  bottomFromFold: 'Bottom rises from fold by',
  oneLeans: 'One side leans in by',
  farLeans: 'Far side leans in by',
  oneSideAdds: 'One side adds to',
  adds: { usual: 'As usual', own: 'Each edge its own' },
  addsTo: { length: 'The length', width: 'The width', none: 'Nothing' },
  /** Labels of the sizes and sides for what is chosen. */
  cutWidth: 'Width as cut',
  cutHalf: 'Width as cut, half',
  cutLength: 'Length as cut',
  farSide: 'Side, far from fold',
  oneSide: 'One side takes',
  fold: { none: 'Open, single', side: 'On the fold' },
  sides: { alike: 'Take the same', different: 'Differ' },
  pairs: { alike: 'All alike', pairs: 'Pairs, mirrored' },
  given: { finished: 'Finished size', cut: 'What was cut' },
  nothing: 'nothing',
  notGiven: 'not given',
  about: 'about',
  both: (wide: string, long: string) => `${wide} × ${long}`,
  after: {
    both: 'to cut, wide × long',
    width: 'wide to cut',
    length: 'long to cut',
  },
  gives: {
    both: 'finished, wide × long',
    width: 'wide, finished',
    length: 'long, finished',
  },
  lacks: { width: 'too narrow', length: 'too short' },
  onFold: (wide: string | undefined, opened: string | undefined) =>
    wide === undefined || opened === undefined
      ? 'Lay one edge on the fold.'
      : `Lay one edge on the fold and cut ${wide} from it: opened it is ${opened}.`,
  flat: 'Cut it single, the length along the grain.',
  wasCut: (wide: string | undefined, long: string | undefined) =>
    `It gives ${[wide && `${wide} wide`, long && `${long} long`].filter(Boolean).join(' and ')}, finished.`,
  wasLess: (wanted: string, take: string) =>
    `Wanted ${wanted}. Take less at an edge: ${take} in all is taken now.`,
  across: { usual: 'Sides take, in width', own: 'Taken, in width' },
  along: { usual: 'Top and bottom take, in length', own: 'Taken, in length' },
  widthTake: {
    fold: (takes: string) => `${takes}; the fold takes nothing`,
    flat: (takes: string) => takes,
  },
  opened: 'Opened, as cut',
  widest: 'Widest, as cut',
  longest: 'Longest, as cut',
  corner: 'Raw corner, beyond the finished one',
  cornerOf: (bottom: string, side: string) => `${bottom} along the bottom, ${side} along the side`,
  /** From bottom and one side round to the top. */
  rawCorners: [
    'Raw corner, bottom, one side',
    'Raw corner, bottom, other side',
    'Raw corner, top, other side',
    'Raw corner, top, one side',
  ],
  rawCorner: (across: string, inwards: boolean, along: string, up: boolean) =>
    `${across} ${inwards ? 'in' : 'out'}, ${along} ${up ? 'up' : 'down'} from the finished one`,
  pieces: 'Pieces',
  piecesOf: (count: number, pairs: boolean) =>
    pairs
      ? `${2 * count}: ${count === 1 ? 'a pair' : `${count} pairs`}, one of each turned over`
      : String(count),
  counted: (count: number, pairs: boolean) =>
    pairs
      ? `${count} ${count === 1 ? 'pair' : 'pairs'}`
      : `${count} ${count === 1 ? 'piece' : 'pieces'}`,
  tooWide: (over: string) =>
    `Wider than the cloth by ${over}: turn it across the cloth where its grain allows, or cut it in two and add a seam to both.`,
  noEdge: 'No edge takes anything: as cut it has no seam, hem or turn.',
  slanted:
    'The sides slant: measure the width where the finished bottom is, and mark the raw corners before cutting.',
  slantedOwn: (fold: boolean) =>
    fold
      ? 'Edges slant: measure the length along the fold, the width level with where the fold ends below, and mark the raw corners before cutting. Falls and rises are counted from the fold to the side.'
      : 'Edges slant: measure the length along the middle, the width level with where the middle ends below, and mark the raw corners before cutting. Falls and rises are counted from one side to the other.',
  offer: {
    skirt: 'Leave a skirt’s for fitting',
    bodice: 'Leave a bodice’s for fitting',
    sleeve: 'Leave a sleeve’s for fitting',
  },
  offerOf: (what: string, top: string, side: string) => `${what}: ${top} top, ${side} sides`,
  before:
    'Before you cut: measure what the piece is sewn to, and see that its hems and seams are as you want them.',
  figure: 'The piece as it is cut, and its finished edges in it',
  top: 'top',
  bottom: 'bottom',
  formula: {
    cut: (takes: string, sum: string) => `${takes} = ${sum}.`,
    slant: (side: string, angle: string, across: string) =>
      `${side} ÷ sin ${angle}° = ${across} along the bottom.`,
    ofLength: (edge: string, angle: string, along: string) =>
      `${edge} ÷ cos ${angle}° = ${along} of the length.`,
    ofWidth: (edge: string, angle: string, across: string) =>
      `${edge} ÷ cos ${angle}° = ${across} of the width.`,
    half: (width: string) => `${width} ÷ 2`,
    shrinks: (size: string, percent: string, cut: string) =>
      `${size} ÷ (1 − ${percent} %) = ${cut}.`,
    shrunk: (cut: string, percent: string, size: string) =>
      `${cut} × (1 − ${percent} %) = ${size}.`,
    twice: (half: string, whole: string) => `2 × ${half} = ${whole}.`,
    corner: (own: string, other: string, angle: string, beyond: string) =>
      `(${other} + ${own} × cos ${angle}°) ÷ sin ${angle}° = ${beyond}.`,
  },
  source: 'Finished size and what each edge takes: common practice, no source.',
  level:
    'Top and bottom are reckoned level. One that slants takes more of the length, its allowance ÷ cos of its slant from level: say then that edges slant each by two measures.',
  derived: 'Geometry, derived here.',
  shrinkage: 'By division, each way by itself (derived here): added on, it would come out short.',
  published: ({ quote }: { quote: PieceQuote }) => `${quoted(pieceQuotes[quote])}.`,
};
