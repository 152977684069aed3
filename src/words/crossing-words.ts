import { markWords } from './mark-words.ts';

/** Two strips of holes laid across each other. */
export const crossingWords = {
  title: 'Crossing strips',
  labels: {
    angle: 'Angle between them',
    hole: 'Punch, across',
    pitch: 'Lower: hole to hole',
    width: 'Lower: wide',
    margin: 'Lower: edge to hole',
    rows: 'Lower: rows',
    phase: 'Lower: crossing to hole',
    upperPitch: 'Upper: hole to hole',
    upperWidth: 'Upper: wide',
    upperMargin: 'Upper: edge to hole',
    upperRows: 'Upper: rows',
    upperPhase: 'Upper: crossing to hole',
  },
  nothing: 'nothing',
  move: 'to move the upper strip along',
  stay: (clashes: number) =>
    clashes === 0 ? 'to move: it lies well' : 'to move: no shift is better',
  clear: (room: string | undefined) =>
    room === undefined
      ? 'Then no hole meets another that is not shared.'
      : `Then no hole clashes: from any new one to the nearest other it is ${room}, centre to centre.`,
  least: (clashes: number) => `No shift is clear. This one has the fewest clashes: ${clashes}.`,
  laid: 'As they lie',
  laidIs: (shared: number, clear: number, clashes: number) =>
    `${shared} shared, ${clear} clear, ${clashes} clashing`,
  moved: 'Moved',
  room: 'Nearest, centre to centre',
  newHoles: 'New holes through the lower strip',
  newHole: 'New hole',
  measuredFrom: 'Hole to measure by',
  madeHole: (along: string, forward: boolean) =>
    `of the lower strip’s first row, ${along} ${forward ? 'past' : 'before'} the crossing of the middle lines`,
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
  figure: 'The crossing, moved, lower strip level',
  rule: 'Shared: centres within a quarter of a hole. Clear: two holes apart or more. Else they clash.',
  derived: 'Shifts within one pitch tried 0.1 mm apart, other pitches 0.1 %; derived here.',
};
