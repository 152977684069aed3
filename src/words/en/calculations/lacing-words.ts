import type { HolePlace } from '../../../sewing/hole-place.ts';
import type { FromMiddle } from '../../../sewing/lacing/lacing.ts';
import type { Face } from '../../../sewing/lacing/lacing-repeat.ts';
import type { LacingQuote } from '../../../sewing/sources/lacing.ts';
import { holeWords } from '../common/hole-words.ts';
import { lacingQuotes } from '../published/published-lacing-words.ts';

const FACES: Readonly<Record<Face, string>> = { front: 'front', back: 'back' };

/** A place along the row, after what lies there. */
const alongRow = (at: HolePlace) =>
  at.beyond === 0 ? ` at hole ${at.hole}` : `, ${holeWords.place(at)}`;

/** Lace for a row of holes. */
export const lacingWords = {
  title: 'Lace for a row of holes',
  labels: {
    kind: 'Lacing',
    own: 'Steps: along, across, face',
    holes: 'Holes',
    pitch: 'Hole to hole',
    holes2: 'Row 2: holes',
    pitch2: 'Row 2: hole to hole',
    margin: 'Edge to hole, centre',
    thickness: 'Thickness, all layers',
    outside: 'Outside the edge by',
    lace: 'Lace, wide',
    start: 'Start',
    tail: 'Tail at each end',
    longest: 'Longest piece',
    step: 'Drawn up to step',
  },
  kind: {
    edge: 'Over the edge',
    outside: 'Slanted, outside',
    running: 'Running',
    saddle: 'Saddle, two needles',
    cross: 'Cross',
    'single-loop': 'Single loop',
    'double-loop': 'Double loop',
    own: 'Own steps',
  },
  start: { end: 'At one end', middle: 'In the middle' },
  all: 'All',
  asMargin: 'as edge to hole',
  oneRow: 'one row only',
  asFirst: 'as the first row',
  ownHint: '0 1 front; 1 0 front; …',
  after: 'of lace to cut',
  afterBoth: 'of lace to cut for both rows',
  row: (row: number) => `Row ${row}`,
  ofRow: (row: number, said: string) => `Row ${row}: ${said}`,
  cut: (total: string) => `cut ${total}.`,
  onePiece: 'In one piece.',
  pieces: (pieces: number, each: string) =>
    `In ${pieces} pieces of ${each}, ${pieces === 2 ? 'spliced once' : `spliced ${pieces - 1} times`}: add to each what a splice laps.`,
  tails: (tail: string) => `A tail of ${tail} at each end is in it.`,
  noTails: 'No tails are in it.',
  fromMiddle: (
    { at, face }: FromMiddle,
    [toFirst, toLast]: readonly string[],
    pieces: boolean,
    slants: boolean,
  ) => {
    const from = `${face ? `on the ${FACES[face]},` : 'in'} ${holeWords.place(at)}`;
    const of = pieces ? 'one piece' : 'lace';
    const way =
      toFirst === toLast ? 'to each side' : `towards hole 1 and ${toLast} towards the last`;
    return `Start ${from}, with ${toFirst} of ${of} ${way}; from there each half ${slants ? 'slants' : 'goes'} its own way.`;
  },
  needles: 'A needle at each end of the lace: both go through every hole.',
  thereAndBack: 'Lace to the last hole, and back through the same holes.',
  perPitch: 'From hole to hole, by geometry',
  geometry: 'By geometry',
  published: 'Published',
  /** A factor, or several, and what they come to, tails and all. */
  timesIs: (times: string, total: string) => `${times} × the edge, ${total} in all`,
  range: (least = '', most = '') => (least === most ? least : `${least} to ${most}`),
  cutBy: 'Cut by',
  by: {
    published: 'what is published, as the greater',
    within: 'geometry, which lies within what is published',
    geometry: 'geometry, as the greater',
  },
  edge: 'First to last hole',
  half: 'Each half, with its tail',
  halves: ([toFirst, toLast]: readonly string[]) =>
    toFirst === toLast ? `${toFirst}` : `${toFirst}; ${toLast}`,
  begins: (slants: boolean) => (slants ? 'Slant changes sides' : 'Halves begin'),
  place: (at: HolePlace) => holeWords.place(at),
  ends: 'Ends of the lace',
  facesOf: ([one, other]: readonly [Face, Face]) =>
    one === other
      ? `both on the ${FACES[one]}`
      : `one on the ${FACES[one]}, one on the ${FACES[other]}`,
  evenNeeded: 'for both on one face take an even count of holes',
  steps: {
    step: (step: number) => `Step ${step}`,
    from: (face: Face, place: string, before: boolean) =>
      `on the ${FACES[face]}, ${before ? 'at' : 'out of'} ${place}`,
    straight: (face: Face, place: string) => `on the ${FACES[face]} to ${place}`,
    hole: (face: Face) => `through the hole to the ${FACES[face]}`,
    strip: (face: Face) => `through the strip to the ${FACES[face]}`,
    edge: (face: Face) => `round the edge to the ${FACES[face]}`,
    turn: ', and once round the lace that lies there',
    atHole: (at: HolePlace) => holeWords.place(at),
    atEdge: (at: HolePlace) => `the edge${alongRow(at)}`,
    outside: (by: string, at: HolePlace) => `${by} outside the edge${alongRow(at)}`,
    inside: (by: string, at: HolePlace) => `${by} in from the edge${alongRow(at)}`,
  },
  figure: (face: Face) => `From the ${FACES[face]}`,
  hole: 'Hole',
  offPublished: (geometry: string, per: number, published: string, less: boolean) =>
    `Geometry gives ${geometry}: ${per} % ${less ? 'less' : 'more'} than the ${published} × that is published. The greater is what to cut, as lace cut too short is lost. ${
      less
        ? 'Geometry takes the lace as drawn tight and straight from place to place; in loops and turns it lies slack.'
        : 'A published factor knows nothing of how far apart, how far in and through how much these holes go.'
    } Lace ten holes, undo them and measure before you cut.`,
  cutShort: (advance: number, stitches: number) =>
    `The steps come ${advance} holes on and there are ${stitches} stitches: the last time they stop at the last hole.`,
  beyond: (by: string, end: string) =>
    `The steps reach ${by} ${by === '1' ? 'pitch' : 'pitches'} past the ${end} hole: finish that end by hand.`,
  offHoles: (steps: readonly number[]) =>
    `${steps.length === 1 ? 'Step' : 'Steps'} ${steps.join(', ')}: the lace passes through where the row has no hole. Punch one there at each repeat.`,
  caution:
    'Awl, punch and needle go away from the hand that holds, never towards or above it. Where you work with others, local rules and qualified practice come first.',
  sum: (parts: readonly string[], total: string, said: string) =>
    `${parts.join(' + ')} = ${total}: ${said}.`,
  parts: (turns: boolean, tails: boolean) =>
    `straight from place to place, through the layers${turns ? ', turns of twice the lace’s width' : ''}${tails ? ', tails' : ''}`,
  bySource: ({ quote }: { quote: LacingQuote }, tails: boolean) =>
    `${lacingQuotes[quote].says}; and through the first hole${tails ? ', and tails' : ''}`,
  rule: ({ quote }: { quote: LacingQuote }) => `${lacingQuotes[quote].says}.`,
  source: ({ quote }: { quote: LacingQuote }) => lacingQuotes[quote].source,
  derived: 'Geometry, derived here. Passes: one for each time the lace changes face.',
};
