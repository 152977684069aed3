import type { SizeQuote } from '../../../sewing/sources/sizes.ts';
import { sizeQuotes } from '../published/published-size-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

interface Size {
  us: number;
  metric: number;
}

/** Stitches, buttons and needles. */
export const sizesWords = {
  title: CALCULATION_NAMES.sizes,
  what: { stitch: 'Stitch', button: 'Button', needle: 'Needle size' },
  labels: {
    what: 'What',
    stitch: 'Stitch',
    stitchBy: 'Given as',
    button: 'Button',
    needle: 'Needle size',
    needleBy: 'Given as',
  },
  stitchBy: { mm: 'mm long', in: 'to the inch', cm: 'to the centimetre' },
  needleBy: { metric: 'metric size', us: 'US size' },
  inMm: 'In millimetres',
  inInches: 'In inches',
  stitchLong: 'long',
  perInch: 'to the inch',
  stitchSentence: (mm: string, perInch: string) =>
    `Set the stitch to ${mm}: ${perInch} ${perInch === '1' ? 'stitch' : 'stitches'} to the inch.`,
  inUse: 'In use',
  inUseOf: (shirts: { quote: SizeQuote }, trousers: { quote: SizeQuote }) =>
    `${sizeQuotes[shirts.quote].says}; ${sizeQuotes[trousers.quote].says}`,
  source: ({ quote }: { quote: SizeQuote }) => sizeQuotes[quote].source,
  stitchSource: 'By definition: an inch is 25.4 mm, a centimetre 10 mm.',
  stitchFormula: (inch: string, mm: string, perInch: string) =>
    `${inch} ÷ ${mm} = ${perInch} to the inch.`,
  longFormula: (over: string, per: string, mm: string) => `${over} ÷ ${per} = ${mm} long.`,
  lines: 'button lines',
  buttonSold: (lines: number, mm: string) => `${lines} lines is a size sold: ${mm} across.`,
  buttonNear: (lines: number, mm: string, off: string, wider: boolean) =>
    `Nearest size sold: ${lines} lines, ${mm}, ${off} ${wider ? 'wider' : 'narrower'}.`,
  sizesSold: 'Sizes sold, in lines',
  buttonFormula: (lines: string, inch: string, mm: string) =>
    `${lines} lines × ${inch} ÷ 40 = ${mm}. Other “lines” exist: this is the button line, 1/40 in.`,
  metricNeedle: 'metric',
  usNeedle: 'US size',
  needleIs: (metric: number, us: number, thick: string) =>
    `Metric ${metric} is US ${us}: a blade ${thick} mm thick.`,
  needleBetween: (finer: Size, coarser: Size) =>
    `Between two sizes: metric ${finer.metric} (US ${finer.us}) and ${coarser.metric} (US ${coarser.us}). Take the finer for fine cloth.`,
  disputed: ({ quote }: { quote: SizeQuote }) => `Sources differ: ${sizeQuotes[quote].says}.`,
  metricSize: (metric: number) => `Metric ${metric}`,
  usSize: (us: number) => `US ${us}`,
  needleFormula: (metric: number, mm: string) =>
    `Metric is the blade in hundredths of a millimetre: ${metric} ÷ 100 = ${mm}, in millimetres.`,
  needleRule: (us: number, metric: number) =>
    `Below US 19 by a rule: 60 + 5 × (${us} − 8) = ${metric} metric.`,
  needleTable: 'From US 19 there is no rule, only the table.',
};
