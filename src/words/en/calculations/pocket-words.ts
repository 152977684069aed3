import type { PocketQuote } from '../../../sewing/sources/pockets.ts';
import { pocketQuotes } from '../published/published-pocket-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: PocketQuote[]) =>
  `${quotes.map((quote) => quoted(pocketQuotes[quote])).join('; ')}.`;

/** Where a pocket lies, and what is cut for it. */
export const pocketWords = {
  title: CALCULATION_NAMES.pocket,
  labels: {
    kind: 'Pocket',
    front: 'Centre line to side',
    width: 'Pocket, finished width',
    place: 'Where across',
    near: 'Centre line to its nearer edge',
    down: 'From the waist down to its opening',
    slant: 'Farther end lower by',
    deep: 'Pocket, finished depth',
    hem: 'Hem at its top',
    seam: 'Seam, each edge',
    hand: 'Hand, round the knuckles',
    ease: 'To spare for the hand',
    to: 'Free down to: hem, dart, seam end',
  },
  kind: { patch: 'Patch, sewn on', seam: 'In the side seam', slash: 'Slashed, or welted' },
  place: { thirds: 'Two thirds to the centre', middle: 'In the middle', given: 'Typed' },
  opening: 'Opening, long',
  notGiven: 'not given',
  none: 'none',
  level: 'level',
  near: 'from the centre line to its nearer edge, on both fronts',
  begins: 'from the waist to where it opens, on both sides',
  sentence: {
    patch:
      'Mark both fronts from their own centre line and waist with the same numbers; pin, hold the fronts together and see that the pockets meet.',
    seam: 'Mark front and back, left and right, from the waist with the same numbers; the seam is sewn above and below.',
    slash:
      'Mark both fronts from their own centre line and waist with the same numbers. Sew facing or welts first, hold the fronts together, and only then cut.',
  },
  far: 'Centre line to its farther edge',
  down: 'From the waist to its opening',
  downFar: 'From the waist to its farther end',
  ends: 'From the waist to where it closes',
  wide: 'Cut wide',
  deep: 'Cut deep',
  facingLong: 'Facing cut long',
  hem: 'Hem folded at the top',
  corners: 'Corners',
  cornersOf: (by: string) => `trim within ${by} of the finished corner`,
  hand: 'Opening for the hand, at least',
  tooNarrow: (needs: string) =>
    `The hand doesn’t slip in easily: the opening would be at least ${needs}.`,
  over: (by: string) =>
    `It reaches ${by} past what is free: move it up, or make it less deep, before it is cut.`,
  tryHand:
    'Pin it and put the hand in before you sew, standing: it should reach without leaning. Bar-tack both ends.',
  slashLast:
    'Cut the slash last, from its middle, into both corners to the last stitch, points away from the hand that holds the cloth.',
  figure: 'Half of the front with its pocket; the other front mirrors it',
  formula: {
    thirds: (front: string, across: string, of: number, parts: number, near: string) =>
      `(${front} − ${across}) ÷ ${of} × ${parts} = ${near}.`,
    middle: (front: string, across: string, near: string) =>
      `(${front} − ${across}) ÷ 2 = ${near}.`,
    slant: (across: string, slant: string, width: string) =>
      `${across} × ${across} + ${slant} × ${slant} = ${width} × ${width}.`,
    far: (near: string, across: string, far: string) => `${near} + ${across} = ${far}.`,
    ends: (down: string, width: string, end: string) => `${down} + ${width} = ${end}.`,
    wide: (width: string, seam: string, wide: string) => `${width} + 2 × ${seam} = ${wide}. `,
    deep: (deep: string, hem: string, seam: string, cut: string) =>
      `${deep} + ${hem} + 2 × ${seam} = ${cut}.`,
    facing: (width: string, beyond: string, long: string) => `${width} + 2 × ${beyond} = ${long}.`,
    hand: (hand: string, ease: string, least: string) => `${hand} ÷ 2 + ${ease} = ${least}.`,
  },
  geometry: 'Geometry.',
  placeSource: says('two-thirds'),
  mirror: 'The other front has the same numbers from the same lines: its mirror image.',
  seamSource: says('in-seam', 'hand-level'),
  patchSource: says('patch-top', 'corner-trim'),
  slashSource: says('slash-facing'),
  handSource: `Derived here: an opening lies flat at twice its length. ${says('hand-level')}`,
};
