import type { ShrinkageQuote } from '../../../sewing/sources/shrinkage.ts';
import { shrinkageQuotes } from '../published/published-shrinkage-words.ts';
import { quoted } from '../published/published-words.ts';

type Way = 'along' | 'across';

/** A share in per cent taken away; what has grown, less than nothing, is added. */
const less = (share: string) => (share.startsWith('−') ? `+ ${share.slice(1)} %` : `− ${share} %`);

const ways = { along: 'along the grain', across: 'across it' };

/** What is said of shrinkage. */
export const shrinkageAnswerWords = {
  long: 'long to cut',
  wide: 'wide to cut',
  lost: 'lost along the grain',
  grown: 'grown along the grain',
  sentence: (along: string, across: string) =>
    `${along} along the grain${across === '' ? '' : `, ${across} across it`}. Wash, dry, steam and press the sample as the garment will be, as often; then measure, and only then cut.`,
  shrinks: (share: string) => `loses ${share} %`,
  grows: (share: string) => `grows ${share} %`,
  stays: 'stays as it is',
  shrinksLine: { along: 'Along the grain', across: 'Across it' },
  doubted: (what: string, doubt: string) => `${what}, give or take ${doubt} %`,
  area: 'Of its area',
  wideLine: 'Cut wide',
  after: { along: 'What is there, long afterwards', across: 'What is there, wide afterwards' },
  differs: 'Interfacing against cloth, over the length',
  differsOf: (by: string, more: boolean) =>
    by === ''
      ? 'the same'
      : `it loses ${by} ${more ? 'less: it stands loose' : 'more: it puckers the cloth'}`,
  growsWarning: (way: Way, cut: boolean) =>
    `It grows ${ways[way]}: let it hang a day and shorten it then. ${cut ? 'It is cut smaller here, as you asked: what stops growing stays too small.' : 'It is cut as it is wanted, no smaller.'}`,
  much: (way: Way) =>
    `Over 30 % ${ways[way]}: measure again, and wash a second sample before you rely on it.`,
  oneReading: (few: readonly Way[]) =>
    `One reading ${few.length > 1 ? 'each way' : few.map((way) => ways[way]).join()}: measure at three places of the sample, and give all of them.`,
  unsure: (way: Way) =>
    `What it changes ${ways[way]} is less than two readings may be off: mark a longer sample.`,
  sample:
    'Sew the marks in, at least 5 cm from the selvedge and from what is pulled out of shape; let nothing hang over the table’s edge.',
  formula: {
    mean: (readings: readonly string[], mean: string) =>
      `(${readings.join(' + ')}) ÷ ${readings.length} = ${mean}. `,
    share: (before: string, after: string, share: string) =>
      `(${before} − ${after}) ÷ ${before} = ${share} %.`,
    times: (shares: readonly string[], share: string) =>
      ` 1 − ${shares.map((one) => `(1 ${less(one)})`).join(' × ')} = ${share} %.`,
    cut: (wanted: string, share: string, cut: string) => `${wanted} ÷ (1 ${less(share)}) = ${cut}.`,
    after: (there: string, share: string, after: string) =>
      `${there} × (1 ${less(share)}) = ${after}.`,
    differs: (long: string, one: string, other: string, by: string) =>
      `${long} × (${one} % ${less(other)}) = ${by}.`,
  },
  derived: 'Shares multiply: what one treatment leaves, the next takes from.',
  published: ({ quote }: { quote: ShrinkageQuote }) => `${quoted(shrinkageQuotes[quote])}.`,
  figure: 'The sample, and beside it the piece: as cut, and as it comes out',
};
