import type { Datum } from '../sewing/run.ts';
import { placeWords } from './place-words.ts';

/** True size on the glass of the phone. */
export const glassWords = {
  title: 'On the glass, true size',
  set: {
    title: 'Set the scale of this screen',
    why: 'Nothing is shown at true size before the screen has been measured, once, with a bank card (85.60 × 53.98 mm).',
    long: 'Hold a card on the glass, its long side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
    short:
      'Now turn the card: its short side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
    only: 'Hold a card on the glass, its short side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
    again:
      'Once more, from the other end of the glass: the lower edge of the card on the lower line, move the upper line.',
    less: 'One pixel less',
    more: 'One pixel more',
    tooLong: 'The card is longer than the screen',
    matches: 'It matches',
    line: 'The line to move',
    differ: (percent: string) =>
      `The two measurements differ by ${percent} %: one of them is off. Measure again, card flat on the glass, eyes straight above.`,
  },
  zoomed: 'The page is zoomed, so nothing on it is true. Pinch it back to its own size.',
  changed: 'The screen shows things in another size than when it was measured: measure it again.',
  notKept: 'The scale could not be kept: it holds until this page is left.',
  nothing: 'There are no marks to show: the numbers give no answer. Go back and mend them.',
  small: 'This screen is too short to show anything at true size.',
  datum: (datum: Datum) => `zero: measured ${placeWords(datum)}`,
  overlap: 'overlap mark',
  first: 'Lay the phone on the work, the line at zero where you measure from.',
  next: (mark: string) => `Slide the phone on until this line lies on ${mark}.`,
  mark: (label: string) => `mark ${label}`,
  ofThese: (at: number, count: number) => `Stretch ${at} of ${count}`,
  check: 'Check one distance with the tape before you cut or punch.',
  on: 'Next stretch',
  back: 'Back one',
  anew: 'Measure anew',
  leave: 'Close',
};
