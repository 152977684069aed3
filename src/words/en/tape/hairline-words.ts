/** The lines on the photo of a tape, and what they read. */
export const hairlineWords = {
  picture: 'The photo, with the scale found and the numbers read',
  told: 'Reading',
  lines: ['Line', 'Second line'],
  twoLines: 'Difference',
  oneLine: 'From zero',
  less: 'Line back a little',
  more: 'Line on a little',
  use: (name: string) => `Use: ${name}`,
  unused: (name: string, other: string) =>
    `${name} could not be fetched, so the number was not used; it stays here. Connect and press that again, or use it in “${other}”.`,
  fromZero: 'from zero',
  apart: 'from line to line',
  within: (tolerance: string) => `± ${tolerance}`,
  also: (other: string, mark: string) => `${other}; nearest mark ${mark}`,
  spoken: (length: string, within: string) => `${length}, plus or minus ${within}`,
  angle: (degrees: number) =>
    degrees < 10
      ? `Seen ${degrees}° from square on.`
      : `Seen ${degrees}° from square on: hold the phone square on for a surer number.`,
  parallax:
    'Cloth above the tape shifts the reading when seen from the side: 3 mm above it, 15 cm beside the middle, from 40 cm away, by 1 mm.',
  tape: (picture: string, two: string, three: string) =>
    `In the ±: ${picture} from the photo, and ${two} that a new tape of class II may be off here. One of class III may be off by ${three}, a stretched one by more.`,
  aim: 'Touch the tape where it is to be read. Keys can move the line there, too.',
  aimSecond: 'Touch the tape where the second line is to stand.',
};

/** Why one place gives no number though the picture does. */
export const pointWords = {
  'off-the-scale': 'This place is not on the scale outlined. Drag the line onto it.',
  'beyond-the-numbers': 'Beyond the numbers that could be read: stay between them.',
  'below-zero': 'This place is before the zero of the scale.',
  'another-scale': 'Here two edges tell different numbers. Move the line nearer to one edge.',
  'not-sure-yet': 'Not sure yet: answer the question first.',
  'lines-unclear': 'The graduations are not clear here. Move the line a little.',
  'nothing-read': 'Nothing could be read.',
  'not-aimed': 'No number yet: move the line to its place.',
  'two-scales': 'The two lines are on different edges. Move both onto one.',
};
