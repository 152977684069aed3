import type { WebPlace } from '../../../sewing/edging/strip-material.ts';
import type { HolePlace } from '../../../sewing/hole-place.ts';
import { holeWords } from '../common/hole-words.ts';

const WEBS: Readonly<Record<WebPlace, string>> = {
  along: 'Left from hole to hole',
  rows: 'Left from row to row',
  edge: 'Left to the edge',
  end: 'Left to the cut end',
};

/** A row as it is told. */
interface RowSaid {
  count: number;
  pitch: string;
  /** From the cut end to its first hole. */
  first: string;
}

const holes = (count: number) => (count === 1 ? 'hole' : 'holes');

/** Holes along a strip. */
export const edgingWords = {
  title: 'Edging: holes along a strip',
  labels: {
    length: 'Strip, long',
    width: 'Strip, wide',
    pitch: 'Hole to hole',
    margin: 'Edge to hole, centre',
    hole: 'Punch, across',
    rows: 'Rows',
    fit: 'Pitch',
    middle: 'Middle of the strip',
    end: 'Cut end to first hole',
    radius: 'Bent round a radius of',
    corners: 'Turns a corner at',
    angle: 'Angle of the corner',
    teeth: 'Teeth of the iron',
    stock: 'To join from pieces of',
    crossings: 'Crossed at',
    follow: 'Follows the holes',
    offset: 'Further on by',
  },
  fit: {
    split: 'Kept, ends alike',
    'far-end': 'Kept, rest at far end',
    fill: 'Fill the length',
    loop: 'Close a loop',
  },
  /** Along corners each side is filled. */
  fitTurned: { fill: 'Open, sides filled', loop: 'Closed outline' },
  middle: { any: 'Anywhere', hole: 'On a hole', between: 'Between holes' },
  notGiven: 'not given',
  halfPitch: 'half the pitch',
  straight: 'straight',
  none: 'none',
  samePlaces: 'nothing',
  followed: (count: number, rows: number, staggered: boolean) => {
    const first = `${rows === 1 ? 'Each hole lies' : 'Each hole of the first row lies'} where the one it follows does, measured from the cut end`;
    const second = staggered
      ? 'those of the second midway between them'
      : 'the second row is level';
    return `${count} ${holes(count)}. ${first}${rows === 1 ? '' : `; ${second}`}.`;
  },
  steps: (least: string, widest: string) => `${least} to ${widest}`,
  holes,
  hole: 'Hole',
  row: (row: number, rows: number) => (rows === 1 ? 'Holes' : `Row ${row}`),
  side: (row: string, side: number) => `${row}, side ${side}`,
  /** On a loop the first hole is where it is cut. */
  sentence: (rows: readonly RowSaid[], loop: boolean) => {
    const each = rows.map(
      ({ count, pitch, first }, i) =>
        `${rows.length === 1 ? '' : `Row ${i + 1}: `}${count} ${holes(count)}${count === 1 ? '' : `, ${pitch} apart`}${loop ? '' : `, the first ${first} from the cut end`}.`,
    );
    return `${each.join(' ')}${loop ? ' Cut between two holes.' : ''}`;
  },
  turned: (count: number, rows: number, staggered: boolean, closed: boolean) =>
    `${count} holes, one ${rows === 1 ? '' : 'of each row '}in each corner${closed ? ', which two sides share' : ''}. Each side is filled by itself${staggered ? ', so the rows are not staggered' : ''}.${closed ? ' Join it between two holes, not in a corner.' : ''}`,
  pitch: (row: string) => `${row}: hole to hole`,
  changed: (pitch: string, by: string) => `${pitch} (${by} than wanted)`,
  more: (by: string) => `${by} more`,
  less: (by: string) => `${by} less`,
  left: (bent: boolean) => (bent ? 'Left over, on the middle line' : 'Left over'),
  leftBoth: (each: string) => `${each} more at each end`,
  leftFar: (length: string) => `${length} more at the far end`,
  middleOf: (row: string) => `${row}: middle`,
  place: (at: HolePlace) => holeWords.place(at),
  webs: WEBS,
  thin: (place: WebPlace, clear: string, hole: string) =>
    `${WEBS[place]}: ${clear}, less than one hole of ${hole}. It may tear (common practice, no source).`,
  strikes: (teeth: number) => `Strikes of ${teeth} teeth`,
  ironOff: (off: string) =>
    `The iron’s teeth stand at the pitch that was wanted: over its length they would be ${off} off. Mark each hole.`,
  joins: 'Join at',
  pieces: (pieces: number, at: string) => `${at}: ${pieces} pieces`,
  onePiece: 'no join: one piece is enough',
  noJoins:
    'There is no place between holes that such pieces reach. Give longer ones, a wider pitch, or fewer crossings.',
  thinJoin:
    'A join comes nearer to a hole than one hole’s width: join it slanted, or skive and lap it.',
  start: 'The start of the strip',
  centre: 'The middle of the strip',
  corner: 'The first corner',
  formula: {
    kept: (room: string, spaces: number, pitch: string, left: string) =>
      `${room} = ${spaces} × ${pitch} + ${left}: spaces, and what is left over.`,
    filled: (room: string, spaces: number, pitch: string, side: boolean) =>
      `${room} ÷ ${spaces} = ${pitch}: spaces${side ? ' of side 1' : ''}.`,
  },
  derived: 'Counting and geometry, derived here.',
  usual:
    'Hole to hole for lace under 1/8 in: 3/16 or 1/4 in; wider lace: 5/16 to 3/8 in. From the edge as wide as the lace.',
  usualSource: 'Lacing Leather, extension sheet L-382',
  count: 'Find its middle',
  crossing: 'Crossing strips',
  lacing: 'Lace for it',
};
