import type { HolePlace } from '../../../sewing/hole-place.ts';
import { holeWords } from '../common/hole-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Finding the middle of a row by counting its holes. */
export const centreWords = {
  title: CALCULATION_NAMES.centre,
  labels: {
    count: 'Holes counted',
    other: 'From the other end',
    pitch: 'Hole to hole',
    measured: 'First to last, measured',
  },
  notGiven: 'not given',
  count: 'Count',
  holes: 'holes',
  inDoubt: 'holes counted, in doubt',
  place: holeWords.place,
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
  counted: (count: number) => `${count} holes`,
  fromOther: (count: number) => `${count} counted back`,
  hole: 'Hole',
  formula: (count: number) =>
    count % 2 === 1
      ? `(${count} + 1) ÷ 2 = ${(count + 1) / 2}.`
      : `${count} ÷ 2 = ${count / 2}, so between ${count / 2} and ${count / 2 + 1}.`,
  source: 'Counting, derived here.',
  punch: holeWords.punch,
  tally: {
    end: (other: boolean) => (other ? 'From the other end' : 'From this end'),
    more: 'One more hole',
    anywhere: 'press anywhere down here',
    less: 'One less',
    again: 'Start again',
    backTo: (count: number) => `Back to ${count}`,
    otherEnd: 'Other end',
    last: 'That was the last',
    facing: (count: number) => `Counted from the other end before: ${count}.`,
    speak: 'Speak',
    leave: 'Close',
    most: 'That is the most that is counted: 2,000.',
    few: 'Count at least two holes.',
  },
};
