import type { Datum } from '../sewing/run.ts';
import { placeWords } from './place-words.ts';

/** Templates at true size: on paper, and as files. */
export const paperWords = {
  title: 'On paper, true size',
  of: (title: string) => `${title}, on paper`,
  keptName: (garment: string, kept: string) => `${garment}: ${kept}`,
  sizes: { a4: 'A4', letter: 'Letter' },
  size: 'Paper',
  margin: 'Margin',
  margins: { '5': '5 mm', '10': '10 mm', '15': '15 mm' },
  name: 'Name on the pages',
  pages: (pages: number) => (pages === 1 ? 'One page' : `${pages} pages`),
  actual: 'Print at actual size (100 %), then measure both bars: if one is off, the marks are too.',
  make: 'Make the PDF',
  making: (percent: number) => `Writing the PDF: ${percent} %`,
  cancel: 'Call it off',
  save: 'Save the PDF',
  share: 'Share the PDF',
  failed: 'The PDF could not be written. Nothing was kept or changed; try again.',
  svg: (name: string) => `SVG: ${name}`,
  svgs: 'Drawings as SVG, in millimetres',
  leave: 'Back',
  actualSize: 'Print at actual size (100 %). Measure the two bars below before you use it.',
  bars: ['50 mm', '2 in'] as const,
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  bandOf: (name: string, from: number, to: number, length: number) =>
    `${name}: ${place(from)} to ${place(to)} of ${place(length)} mm`,
  join: (letter: string) => `${letter}: join here`,
  datum: (datum: Datum) => `Measured ${placeWords(datum)}`,
  nothing: 'There are no marks to put on paper: the numbers give no answer. Go back and mend them.',
  tooLong: (most: string) =>
    `It is longer than ${most}, the most that is put on paper. Shorten it, or follow the marks with the tape.`,
  tooWide: (most: string) =>
    `The strip is wider than a page has room for: ${most} at these margins. Choose smaller margins.`,
  noRoom: (most: string) => `These margins leave no room on the paper. Give ${most} at the most.`,
};

function place(mm: number): string {
  return String(Math.round(mm * 10) / 10);
}
