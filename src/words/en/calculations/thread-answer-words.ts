import type { ThreadQuote } from '../../../sewing/sources/thread.ts';
import { threadQuotes } from '../published/published-thread-words.ts';
import { quoted } from '../published/published-words.ts';

/** What is said of thread. */
export const threadAnswerWords = {
  after: 'of thread, ends and waste in it',
  nothing: 'No seam, no thread: nothing to buy.',
  sentence: (ratio: string, seams: number) =>
    `${ratio} times the seam${seams === 1 ? '' : ', over all of them'}. Buy no less, all of one dye lot.`,
  inAll: 'That is',
  unit: { metric: (m: string) => `${m} m`, yards: (yd: string) => `${yd} yd` },
  ratio: 'Thread to seam',
  needle: 'Of it the needle’s',
  other: { wound: 'Of it the bobbin’s', looped: 'Of it the other threads’' },
  each: (place: number) => `Seam ${place}`,
  spools: 'Spools to have',
  spoolsOf: (count: number, threads: number, most: boolean) => {
    const fed = threads === 1 ? '' : `, ${threads} threads each from its own`;
    return `${most ? 'at most ' : ''}${count}${fed}`;
  },
  fills: 'Bobbins to wind',
  hand: 'Threads to cut',
  ticket: 'Ticket number, about',
  cotton: 'Cotton ticket, about',
  denier: 'Denier, about',
  metric: 'Metres to a gram, about',
  least: 'Round instead of rectangular',
  tables: 'By the tables',
  tablesOf: (one: string, other: string) => `${one} and ${other}: they differ`,
  alone: (one: string) => one,
  wide: 'Formula, tables and samples differ by an eighth or so for one seam: unpick a sample of your own before you buy the last of a colour.',
  noShares:
    'Nobody says how much each of so many threads takes: so many spools do however they share it.',
  samples: 'A short sample tells little: unpick ten centimetres at least.',
  machine:
    'Foot off the pedal, or the machine switched off, while you thread it and change the bobbin.',
  formula: {
    constant: (constant: number, thick: string, long: string, ratio: string) =>
      `${constant} + 2 × ${thick} ÷ ${long} = ${ratio}.`,
    zigzag: (slope: string, thick: string, long: string, ratio: string) =>
      `2 × (${slope} + ${thick}) ÷ ${long} = ${ratio}.`,
    sample: (needle: string, other: string, seam: string, ratio: string) =>
      `${other === '' ? needle : `(${needle} + ${other})`} ÷ ${seam} = ${ratio}.`,
    tabled: (ratio: string) => `Ratio of the table: ${ratio}.`,
    all: (how: {
      ratio: string;
      passes: number;
      seams: readonly string[];
      ends: string;
      waste: string;
      all: string;
    }) => {
      const long = [
        ...how.seams,
        ...(how.ends === '' ? [] : [`${2 * how.seams.length} × ${how.ends}`]),
      ];
      const sewn = long.length === 1 ? long[0] : `(${long.join(' + ')})`;
      const times = [how.ratio, ...(how.passes === 1 ? [] : [String(how.passes)]), sewn, how.waste];
      return `${times.filter((one) => one !== '').join(' × ')} = ${how.all}.`;
    },
    spools: (all: string, spool: string, exact: string, count: number) =>
      `${all} ÷ ${spool} = ${exact}, so ${count}.`,
    hand: (all: string, working: string, tail: string, exact: string, count: number) =>
      `${all} ÷ (${working} − ${tail}) = ${exact}, so ${count}.`,
  },
  zigzagSource:
    'Geometry, derived here: the slope from side to side in the place of a stitch length.',
  sampleSource: 'Your own sample: nothing is surer.',
  wasteSource: `${quoted(threadQuotes.waste)}. ${quoted(threadQuotes.ends)}.`,
  spoolSource: 'Common practice, no source.',
  workingSource: `${quoted(threadQuotes.working)}. What is left of each: common practice, no source.`,
  published: ({ quote }: { quote: ThreadQuote }) => `${quoted(threadQuotes[quote])}.`,
  figure: 'The seams one after the other; below, the thread they take',
};
