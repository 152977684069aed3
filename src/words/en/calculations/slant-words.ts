import { hemQuotes } from '../published/published-hem-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A slanted hem, of one piece or of a pair. */
export const slantWords = {
  title: CALCULATION_NAMES.slant,
  straight: 'Straight or curved hem',
  labels: {
    one: 'Finished, one side',
    other: 'Finished, other side',
    across: 'From side to side',
    given: 'Given',
    depth: 'Depth, finished',
    thereOne: 'Cloth there, one side',
    thereOther: 'Cloth there, other side',
    turned: 'Turned',
    turn: 'First turn',
    pair: 'Left and right',
    secondOne: '2nd piece, one side',
    secondOther: '2nd piece, other side',
    secondThereOne: '2nd, cloth, one side',
    secondThereOther: '2nd, cloth, other side',
  },
  given: { depth: 'How deep', cloth: 'Cloth that is there' },
  turned: { single: 'Once', double: 'Twice, equally', unequal: 'Twice, first less' },
  pair: { alike: 'Alike, mirrored', own: 'Each its own' },
  after: 'out at the shorter side, in at the longer',
  afterStraight: 'aside: the hem line is square',
  afterCloth: 'deep, at most',
  sentence: (turn: string | false, hem: string) =>
    `Cut the sides of the allowance as the mirror of the piece. ${turn === false ? 'Press' : `Press ${turn} from the raw edge, then`} ${hem} from the raw edge, square to the hem line.`,
  pieces: (i: number) => (i === 1 ? 'First piece' : 'Second piece'),
  ofPiece: (piece: string, label: string) => (piece === '' ? label : `${piece}: ${label}`),
  bothOf: (one: string, other: string) => `${one}; ${other}`,
  below: 'Hem line to raw edge, along the sides',
  cut: 'Cut to, one side; other side',
  trims: 'Cut off, one side; other side',
  mirror: 'Sides turn at the inner fold',
  mirrorOf: (aside: string, down: string) => `${aside} aside, ${down} down from the hem line`,
  angle: 'Hem line off square',
  angleOf: (degrees: string) => `${degrees}°`,
  along: 'Along the hem line',
  needsCloth:
    'At the shorter side the allowance is wider than the piece: leave that cloth when you cut. Where it is cut already, set in a wedge or face the hem.',
  cutFirst:
    'Cut the mirrored sides before you press or sew the side seam below the hem line. Of a pair lay the second one mirrored, and measure both from the same line.',
  figure:
    'Lower ends of the pieces: hem line and inner fold, the sides mirrored below it; thin, where they would run straight on',
  source: 'Geometry, derived here: what is turned up is the mirror of what it lies on.',
  sourceCloth: `Depth: what is there less its turn (${hemQuotes['hem-stitch'].source}), square to the hem line. Mirror: geometry, derived here.`,
  formula: {
    sum: (depth: string, turn: string, allowance: string) => `${depth} + ${turn} = ${allowance}. `,
    cloth: (least: string, degrees: string, allowance: string) =>
      `${least} × cos ${degrees}° = ${allowance}. `,
    half: (allowance: string, depth: string) => `${allowance} ÷ 2 = ${depth}. `,
    less: (allowance: string, turn: string, depth: string) => `${allowance} − ${turn} = ${depth}. `,
    below: (allowance: string, degrees: string, below: string) =>
      `${allowance} ÷ cos ${degrees}° = ${below}. `,
    aside: (depth: string, degrees: string, aside: string) =>
      `2 × ${depth} × sin ${degrees}° = ${aside}. `,
  },
};
