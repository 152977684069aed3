import type { Datum } from '../../../sewing/run.ts';
import { figureWords } from '../common/figure-words.ts';
import { placeWords } from '../common/place-words.ts';

/** Templates at true size: on paper, and as files. */
export const paperWords = {
  title: 'On paper, true size',
  of: (title: string) => `${title}, on paper`,
  sizes: { a4: 'A4', letter: 'Letter' },
  size: 'Paper',
  margin: 'Margin',
  otherMargin: 'Another margin, in mm or with its unit',
  what: 'What goes on paper',
  allMarks: 'All marks',
  allDrawings: 'All drawings',
  aboutSvg: 'One unit of the drawing is 1 mm.',
  name: 'Name on the pages',
  pages: (pages: number) => (pages === 1 ? 'One page' : `${pages} pages`),
  actual:
    'Print at actual size (100\u00a0%), then measure both bars: if one is off, the marks are too.',
  lacking: (letters: string) => `The pages can’t show “${letters}”: each is a “?” on them.`,
  make: 'Make the PDF',
  making: (percent: number) => `Writing the PDF: ${percent} %`,
  cancel: 'Call it off',
  save: 'Save the PDF',
  share: 'Share the PDF',
  failed: 'The PDF could not be written. Nothing was kept or changed; try again.',
  svg: (name: string) => `SVG: ${name}`,
  noSvg: 'The drawing could not be written. Nothing was changed; try again.',
  svgs: 'Drawings as SVG, in millimetres',
  leave: 'Back',
  actualSize: 'Print at actual size (100 %). Measure the two bars below before you use it.',
  bars: ['Measure this: 50 mm', 'and this: 2 in'] as const,
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  /** Of a strip, or of a bare run; lengths as shown. */
  bandOf: (name: string, from: string, to: string, length: string, datum: string) =>
    `${name}: ${from} to ${to} of ${length}, ${datum}, along the arrow`,
  tileOf: (
    name: string,
    place: { column: number; columns: number; row: number; rows: number },
    turned: boolean,
  ) =>
    [
      name,
      ...(turned ? ['turned by a quarter'] : []),
      ...(place.columns > 1 ? [`column ${place.column} of ${place.columns}`] : []),
      ...(place.rows > 1 ? [`row ${place.row} of ${place.rows}`] : []),
    ].join(', '),
  /** Of a drawing; lengths as shown. */
  partOf: (left: string, right: string, top: string, foot: string) =>
    `${left} to ${right} across and ${top} to ${foot} down, measured from the drawing’s upper left corner`,
  lines: figureWords,
  punch: 'hole to punch',
  join: (letter: string) => `${letter}: join here`,
  datum: (datum: Datum) => `measured ${placeWords(datum)}`,
  nothing: 'There is nothing to put on paper: the numbers give no marks. Go back and mend them.',
  noMarks: 'There is nothing to put on paper: this calculation has no marks and no drawing.',
  tooLong: (most: string) =>
    `It is longer than ${most}, the most that is put on paper. Follow the marks with the tape instead.`,
  tooMany: (pages: number, most: number) =>
    `It would take ${pages} pages, and ${most} are the most. Put less on paper, or draw it by its numbers.`,
  tooWide: (most: string) =>
    `The strip is wider than a page has room for: ${most} at these margins. Choose smaller margins.`,
  /** In mm, as bare numbers are in the margin's field. */
  noRoom: (most: number) =>
    `These margins leave no room on the paper. Give ${most} mm at the most.`,
  negative: 'Margin: give 0 or more.',
};
