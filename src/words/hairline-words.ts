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
  tape: (two: number, three: number) =>
    `Not in the ±: the tape itself. A new one may be off here by ${two} mm (class II) or ${three} mm (class III); a stretched one by more.`,
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
  'two-scales': 'The two lines are on different edges. Move both onto one.',
};
