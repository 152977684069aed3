import { figureWords } from '../common/figure-words.ts';
import { howMuchMade } from '../common/how-much-made.ts';
import { paperWords } from '../paper/paper-words.ts';

/** A garment on paper, and as text. */
export const garmentSheetWords = {
  title: 'On paper',
  of: (name: string) => `${name}, on paper`,
  written: (day: string) => `As it stood on ${day}.`,
  made: (made: number, of: number) =>
    of === 1
      ? `Its one step is ${howMuchMade(made, of)}.`
      : `${made} of ${of} steps made; a row is one.`,
  invented: 'Invented, to show the app with: no one’s measures.',

  pending: 'A number is still being typed: it is not on this sheet. Settle it first.',
  conflicts: (count: number) =>
    count === 1
      ? 'One thing is made otherwise than asked, and not decided yet:'
      : `${count} things are made otherwise than asked, and not decided yet:`,
  unread: 'Not on this sheet:',
  earlier: (count: number) =>
    count === 1
      ? 'One thing made of an earlier plan is kept, and not on this sheet.'
      : `${count} things made of an earlier plan are kept, and not on this sheet.`,
  nothing: 'Nothing is on this garment yet.',

  measures: 'Measures',
  body: (name: string) => `${name} (body)`,
  materials: 'Materials, to have at hand',
  works: 'The works, with their numbers',

  passed: (what: string) => `${what} (passed over)`,
  note: (text: string) => `Note: ${text}`,
  noteAt: (work: string, text: string) => `${work}: ${text}`,
  photo: 'A photo of it is on the phone.',
  undecided: 'not decided',
  waits: 'waits',
  count: howMuchMade,
  toCome: 'What is to come isn’t decided: the numbers are of what is made.',
  off: (number: string, off: string) => `${number} ± ${off}`,
  mark: (number: string, what: string) => (what === '' ? number : `${number} ${what}`),
  between: (apart: string) =>
    `A tick at a box: made up to there. Between the boxes the marks are ${apart} apart.`,
  apart: (count: string, apart: string) => `${count}, ${apart} apart`,
  cautionSign: (nth: number) => `(!${nth})`,
  signed: (one: string, other: string) => `${one} ${other}`,
  range: (least: string, most: string) => `${least} to ${most}`,

  text: {
    made: '[x]',
    open: '[ ]',
    line: (mark: string, number: string, what: string) => `${mark} ${what}: ${number}`,
    pair: (name: string, number: string) => `${name}: ${number}`,
    tick: (mark: string, label: string, number: string) => `${mark} ${label}: ${number}`,
  },

  pages: (pages: number) => (pages === 1 ? 'One page' : `${pages} pages`),
  many: (pages: number) => `${pages} pages: there is more on this garment than two hold.`,
  page: (page: number, pages: number) => `Page ${page} of ${pages}`,
  long: 'Rows longer than a page',
  longs: { scale: 'to scale', true: 'at true size, in parts' },
  bodies: 'Measures of the body',
  bodiesShown: { shown: 'on it', out: 'left out' },
  asText: 'Save as text',
  shareText: 'Share as text',
  textFailed: 'The text could not be written. Nothing was changed; try again.',
  readText: 'Read it as text',
  look: 'Touch a page to read it. Print at actual size (100 %).',
  missing: 'Drawings are lacking: they could not be fetched. Connect once, then open it again.',
};

/** What stands on the pages themselves. */
export const sheetPageWords = {
  ...paperWords,
  actualSize:
    'Print at actual size (100 %). Where it says true size, measure the two bars first: if one is off, the marks are too.',
  lines: figureWords,
  trueSize: (datum: string, part: readonly [number, number] | undefined) =>
    `true size, ${datum}${part ? `; part ${part[0]} of ${part[1]}, laid on each other at the letters` : ''}`,
  toScale: (datum: string, times: string) => `scale 1 : ${times} ${datum}: go by the numbers.`,
  someDrawn: 'Only the marks with a box are drawn.',
  notToScale: (name: string) => `${name} (not to scale)`,
};
