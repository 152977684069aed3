/** Touching the lines of a tape that could not be read. */
export const touchWords = {
  how: [
    'Touch a long line in the picture whose number you can read, then type its number.',
    'Now a second one, far from the first.',
    'Touch more lines for a surer reading, or drag the line to the place.',
  ],
  /** After a line was touched for the picture to be looked at there. */
  type: 'Not read there either. Type the number of the line you touched.',
  value: (nth: number) => `Line ${nth}: its number`,
  line: (nth: number) => `Line ${nth}`,
  /** What a screen reader hears of a line: what was typed, and where it stands in the photo. */
  stands: (typed: string, across: number, down: number) =>
    `${typed || 'no number yet'}; ${across} % across, ${down} % down`,
  keys: 'Arrow keys move the line, ten times as far with Shift. Enter: type its number.',
  add: 'Add a line',
  remove: (nth: number) => `Remove line ${nth}`,
  done: 'Done',
  faults: {
    'one-only': 'One more line is needed.',
    'same-place': 'Two touches are on the same line. Touch one farther away.',
    'same-value': 'Two different lines can’t have the same number.',
    'not-in-line': 'The touched lines are not on one straight tape.',
    order: 'The numbers must grow along the tape. Check what was typed.',
  },
};
