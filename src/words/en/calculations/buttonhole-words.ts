import type { ButtonholeQuote } from '../../../sewing/sources/buttonholes.ts';
import { buttonholeQuotes } from '../published/published-buttonhole-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A buttonhole for a button. */
export const buttonholeWords = {
  title: CALCULATION_NAMES.buttonhole,
  labels: {
    diameter: 'Button across',
    thickness: 'Button thick',
    girth: 'Round the widest part',
    holeRule: 'Length by',
    holeWay: 'Lies',
    follow: 'Follows the buttons',
    offset: 'Further on by',
  },
  notMeasured: 'not measured',
  holeRules: {
    'diameter-thickness': 'Across + thick',
    'diameter-thickness-eighth': 'Across + thick + 1/8 in',
    'half-girth-eighth': 'Half the girth + 1/8 in',
    diameter: 'Just across',
    round: '1 1/4 × across, round button',
    'diameter-eighth': 'Across + 1/8 in',
  },
  holeWays: { horizontal: 'Across the edge', vertical: 'Along the edge' },
  noRow: 'one alone',
  samePlaces: 'nothing',
  long: 'long',
  eachLong: (count: number) => (count === 1 ? 'long, one' : `long, each of ${count}`),
  row: (way: 'horizontal' | 'vertical') =>
    way === 'horizontal'
      ? 'Each lies level with its button, from the same zero as the buttons.'
      : 'Each begins above its button, from the same zero as the buttons.',
  rowName: (way: 'horizontal' | 'vertical') =>
    way === 'horizontal' ? 'Where each buttonhole lies' : 'Where each buttonhole begins',
  sentence: (way: 'horizontal' | 'vertical', past: string, rest: string) =>
    way === 'horizontal'
      ? `Start ${past} past the centre line toward the edge; ${rest} lies the other way. Try it on a scrap before you cut.`
      : `On the centre line: ${past} above the button’s place, ${rest} below. Try it on a scrap before you cut.`,
  overlap: ({ quote }: { quote: ButtonholeQuote }) =>
    `Cloth past the centre line, at least: ${buttonholeQuotes[quote].says}`,
  others: 'By the other rules',
  formula: {
    'diameter-thickness': (across: string, thick: string, more: string, long: string) =>
      `${across} + ${thick}${more} = ${long}.`,
    girth: (girth: string, more: string, long: string) => `${girth} ÷ 2${more} = ${long}.`,
    noGirth: (across: string, thick: string, more: string, long: string) =>
      `2 × (${across} + ${thick}) ÷ 2${more} = ${long}.`,
    diameter: (across: string, more: string, long: string) => `${across}${more} = ${long}.`,
    round: (across: string, long: string) => `1 1/4 × ${across} = ${long}.`,
  },
  more: (length: string) => ` + ${length}`,
  rest: (long: string, past: string, rest: string) =>
    `${long} − ${past} = ${rest} on the other side.`,
  published: ({ quote }: { quote: ButtonholeQuote }) => `${quoted(buttonholeQuotes[quote])}.`,
  conflict: 'The published rules differ: the choice is yours.',
  run: 'From the edge side of the hole',
};
