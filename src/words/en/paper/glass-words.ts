import type { Datum } from '../../../sewing/run.ts';
import { placeWords } from '../common/place-words.ts';

/** Measuring the screen with a card. */
const card = {
  title: 'Set the scale of this screen',
  why: 'Nothing is shown at true size before the screen has been measured, once, with a bank card (85.60 × 53.98 mm).',
  long: 'Lay a card flat on the glass, its long side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
  short:
    'Lay a card flat on the glass, its short side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
  turned:
    'Now turn the card, to check: its short side up and down, its upper edge on the upper line. Move the lower line to its lower edge.',
  again:
    'Once more, to check, lower down: the lower edge of the card on the lower line. Move the upper line to its upper edge.',
  by: (pixels: number) =>
    pixels < 0 ? `Line nearer by ${-pixels}` : `Line farther off by ${pixels}`,
  sign: (pixels: number) => (pixels < 0 ? `−${-pixels}` : `+${pixels}`),
  noRoom:
    'There is too little room here for a card: hold the phone upright, or open this from the home screen, without the bars of a browser.',
  atStop: 'The line is at its stop. Where the card is longer, press “Card too long”.',
  tooLong: 'Card too long',
  matches: 'It matches',
  unmoved: 'Move the line to the edge of the card first.',
  differ: (percent: string) =>
    `The two measurements differ by ${percent} %, so one of them is off. Measure again from the beginning: card flat on the glass, eyes straight above.`,
  noScreen:
    'No screen is like that. Measure again from the beginning, with a bank card of 85.60 × 53.98 mm.',
};

/** True size on the glass of the phone. */
export const glassWords = {
  card,
  title: 'On the glass, true size',
  of: (name: string) => `${name}, on the glass at true size`,
  zoomed: 'The page is zoomed, so nothing on it is true. Pinch it back to its own size.',
  changed:
    'This is another screen than was measured, or it shows things in another size: measure it again.',
  notKept: 'The scale could not be kept: it holds until this page is left.',
  nothing: 'There are no marks to show: the numbers give no answer. Go back and mend them.',
  noMarks: 'There are no marks to show: this calculation has none.',
  small: 'This screen is too short to show anything at true size. Hold the phone upright.',
  datum: (datum: Datum) => `0, ${placeWords(datum)}`,
  /** The place first: of a long name, only the end is left out where there is no room. */
  overlap: (place: string) => `${place}, overlap`,
  end: (place: string) => `${place}, end`,
  overlapMark: (place: string) => `the overlap mark at ${place}`,
  first: (datum: Datum) =>
    `Lay the phone on the work, the top line at zero, ${placeWords(datum)}; the arrow points on.`,
  before: (datum: Datum) =>
    `Lay the phone on the work, the line marked 0 at zero, ${placeWords(datum)}; the arrow points on.`,
  onward: (mark: string) => `Slide the phone until the top line lies on ${mark}, which you made.`,
  mark: (label: string) => `mark ${label}`,
  alsoMark: 'Make the overlap mark further on too.',
  ofThese: (at: number, count: number) => `Stretch ${at} of ${count}`,
  check: 'Check one distance with the tape before you cut or punch.',
  upright: 'Held upright, the screen shows more.',
  on: 'Next stretch',
  back: 'Back one',
  anew: 'Measure anew',
  asItWas: 'Leave it as it was',
  leave: 'Close',
};
