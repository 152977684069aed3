import { markWords } from '../common/mark-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const ways = ['away from its hole 1', 'towards its hole 1'];
const back = ['towards it', 'away from it'];

/** Two strips of holes laid across each other. */
export const crossingWords = {
  title: CALCULATION_NAMES.crossing,
  labels: {
    angle: 'Angle between them',
    hole: 'Punch, across',
    pitch: 'Lower: hole to hole',
    width: 'Lower: wide',
    margin: 'Lower: edge to hole',
    rows: 'Lower: rows',
    phase: 'Lower: crossing to next hole',
    upperPitch: 'Upper: hole to hole',
    upperWidth: 'Upper: wide',
    upperMargin: 'Upper: edge to hole',
    upperRows: 'Upper: rows',
    upperPhase: 'Upper: crossing to next hole',
  },
  nothing: 'nothing',
  move: (towards: boolean) => `to move the upper strip, ${ways[Number(towards)]}`,
  lies: 'to move: it lies well',
  clash: (count: number) => `${count === 1 ? 'hole clashes' : 'holes clash'}, however it is moved`,
  tear: (count: number) => `${count === 1 ? 'new hole' : 'new holes'} may tear out at the edge`,
  moveBy: (by: string, towards: boolean, other: string) =>
    `Move the upper strip ${by} ${ways[Number(towards)]}, the way of the arrow; ${other} ${back[Number(towards)]} lies the same.`,
  leave: 'Leave the upper strip where it lies.',
  clear: (room: string | undefined, moved: boolean) => {
    const said = moved ? 'Then no hole' : 'No hole';
    return room === undefined
      ? `${said} meets another that is not shared.`
      : `${said} clashes: from any new one to the nearest other it is ${room}, centre to centre.`;
  },
  least: 'No shift is clear; this one has the fewest clashes.',
  seen: 'Seen',
  seenAs:
    'along each strip from its hole 1, the first row on the left; the upper one turned to the right of the lower by the angle',
  names: { lower: 'lower', upper: 'upper' },
  laid: 'As they lie',
  laidIs: (shared: number, clear: number, clashes: number) =>
    `${shared} shared, ${clear} clear, ${clashes} clashing`,
  moved: 'Moved',
  room: 'Nearest, centre to centre',
  newHoles: 'New holes through the lower strip',
  newHole: 'New hole',
  measuredFrom: 'Hole to measure by',
  madeHole: (along: string, forward: boolean) =>
    `of the lower strip’s first row, ${along} from the crossing of the middle lines towards ${forward ? 'the last hole' : 'hole 1'}`,
  across: 'Across',
  acrossFrom: 'measured in from the lower strip’s edge beside its first row',
  place: (along: string, across: string) => `${along} on, ${markWords.across(across)}`,
  nearEdge: (count: number) =>
    `${count} of them come nearer to the lower strip’s edge than one hole’s width: they may tear out.`,
  clashing: (count: number) =>
    `${count} ${count === 1 ? 'hole is' : 'holes are'} less than one hole’s width from another: the leather between may tear (common practice, no source).`,
  takeShift: (by: string) => `Move it by ${by}`,
  takePitch: (pitch: string) => `Hole to hole ${pitch} on the upper strip: clear`,
  noPitch:
    'No pitch tried within 10 % of it is clear either: change the angle, a margin, or leave holes out where they cross.',
  figure: (moved: boolean) =>
    `The crossing${moved ? ', moved' : ''}, lower strip level; names stand at the ends nearer hole 1`,
  rule: 'Shared: centres within a quarter of a hole. Clear: two holes apart or more. Else they clash.',
  derived: 'Shifts within one pitch tried 0.1 mm apart, other pitches 0.1 %; derived here.',
};
