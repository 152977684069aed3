import type { HolePlace } from '../sewing/centre.ts';

const PARTS: Readonly<Record<number, string>> = {
  0.125: '1/8',
  0.25: '1/4',
  0.375: '3/8',
  0.5: 'half',
  0.625: '5/8',
  0.75: '3/4',
  0.875: '7/8',
};

/** A place on a row of holes, in words. */
function place({ hole, beyond }: HolePlace): string {
  if (beyond === 0) return `hole ${hole}`;
  const part = PARTS[beyond] ?? String(beyond);
  return beyond === 0.5
    ? `between holes ${hole} and ${hole + 1}`
    : `${part} of the way from hole ${hole} to ${hole + 1}`;
}

/** Finding the middle of a row by counting its holes. */
export const centreWords = {
  title: 'Centre by counting',
  labels: {
    count: 'Holes counted',
    other: 'From the other end',
    pitch: 'Hole to hole',
    measured: 'First to last, measured',
  },
  notGiven: 'not given',
  count: 'Count',
  holes: 'holes',
  place,
  middle: (at: HolePlace, each: number) =>
    at.beyond === 0
      ? `The middle is hole ${at.hole}: ${each} on each side.`
      : `The middle is between holes ${at.hole} and ${at.hole + 1}: ${each} on each side.`,
  length: (length: string) => `At this pitch that is ${length} from first to last.`,
  endsDiffer: (count: number, other: number) =>
    `Counted ${count} from one end and ${other} from the other: count again, and mark every tenth hole with a thread.`,
  lengthDiffers: (expected: string, measured: string, likelier: number | undefined) =>
    `${expected} is expected and ${measured} was measured${likelier === undefined ? '' : `: ${likelier} holes are likelier`}. Count again, or measure from the centre of the first to the centre of the last hole.`,
  quarters: 'Quarters',
  eighths: 'Eighths',
  row: 'The middle of the row',
  hole: 'Hole',
  formula: (count: number) =>
    count % 2 === 1
      ? `(${count} + 1) ÷ 2 = ${(count + 1) / 2}.`
      : `${count} ÷ 2 = ${count / 2}, so between ${count / 2} and ${count / 2 + 1}.`,
  source: 'Counting, derived here.',
  punch:
    'Punch on end grain or board, square to the leather, never towards or above the hand behind.',
  tally: {
    end: (other: boolean) => (other ? 'From the other end' : 'From this end'),
    more: 'One more hole',
    anywhere: 'press anywhere down here',
    less: 'One less',
    again: 'Start again',
    backTo: (count: number) => `Back to ${count}`,
    otherEnd: 'Other end',
    speak: 'Speak',
    leave: 'Close',
    most: 'That is the most that is counted: 2,000.',
    few: 'Count at least two holes.',
  },
};
