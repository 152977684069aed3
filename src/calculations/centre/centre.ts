import { centreWords as words } from '#words/centre-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { countOf } from '../../calculation/draft-numbers.ts';
import { fieldsCalled } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { countedRow } from '../../drawing/row-figure.ts';
import { type ExactLength, type Length, toMm } from '../../lengths/length.ts';
import { type CountDoubt, type Counted, centreByCount } from '../../sewing/centre.ts';

const { count, optionalCount, optional } = fieldsCalled(words.labels);

/** Drawn when the pitch is not known: a usual one. Nothing is worked out from it. */
const USUAL_PITCH_MM = 8;

/** The middle of a row of holes, by counting them. */
export const centre: Calculation = {
  id: 'centre',
  title: words.title,
  start: () => ({ count: '27', other: '', pitch: '8 mm', measured: '', end: '' }),
  fields: () => [
    count('count'),
    optionalCount('other', words.notGiven),
    optional('pitch', words.notGiven),
    optional('measured', words.notGiven),
  ],
  tally: true,
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const counted = countOf(read, 'count');
    const other = read.text('other').trim() === '' ? undefined : countOf(read, 'other');
    const pitch = read.maybeLength('pitch');
    const measured = read.maybeLength('measured');
    if (counted === undefined || read.faults.length > 0) return { ok: false, faults: read.faults };
    const outcome = centreByCount({ count: counted, other, pitch, measured });
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(outcome.value, pitch, bench) };
  },
};

function answer(counted: Counted, pitch: Length | undefined, bench: Bench): Answer {
  const { count: holes, centre: middle, eighths, length, doubts, run } = counted;
  const show = (x: ExactLength) => byTape(x, bench);
  const each = Math.floor(holes / 2);
  const pitchMm = pitch === undefined ? USUAL_PITCH_MM : toMm(pitch);
  return {
    headline: { number: String(holes), after: doubts.length > 0 ? words.inDoubt : words.holes },
    sentence: [
      words.middle(middle, each),
      ...(length === undefined ? [] : [words.length(show(length))]),
    ].join(' '),
    lines: [
      { label: words.quarters, value: placesOf(eighths, [1, 5]) },
      { label: words.eighths, value: placesOf(eighths, [0, 2, 4, 6]) },
    ],
    offers: doubts.flatMap((doubt) =>
      doubt.kind === 'length-differs' && doubt.likelier !== undefined
        ? [{ words: `${doubt.likelier} ${words.holes}`, take: { count: String(doubt.likelier) } }]
        : [],
    ),
    warnings: doubts.map((doubt) => doubtWords(doubt, show)),
    cautions: [words.punch],
    listsLast: true,
    runs: run ? [{ name: words.title, item: words.hole, run }] : [],
    figures: [{ name: words.row, figure: countedRow(holes, pitchMm) }],
    workings: [{ formula: words.formula(holes), source: words.source }],
  };
}

function placesOf(eighths: Counted['eighths'], which: readonly number[]): string {
  return which.flatMap((i) => (eighths[i] ? [words.place(eighths[i])] : [])).join('; ');
}

function doubtWords(doubt: CountDoubt, show: (x: ExactLength) => string): string {
  if (doubt.kind === 'ends-differ') return words.endsDiffer(doubt.count, doubt.other);
  return words.lengthDiffers(show(doubt.expected), show(doubt.measured), doubt.likelier);
}
