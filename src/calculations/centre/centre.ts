import { centreWords as words } from '#words/calculations/centre-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Offer } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { countedRow } from '../../drawing/row-figure.ts';
import { type ExactLength, type Length, toMm } from '../../lengths/length.ts';
import { type CountDoubt, type Counted, centreByCount } from '../../sewing/edging/centre.ts';
import { centreFields, USUAL_PITCH_MM } from './fields.ts';

/** The middle of a row of holes, by counting them. */
export const centre: Calculation = {
  id: 'centre',
  title: words.title,
  ...centreFields.asked,
  tally: true,
  work(draft, bench) {
    const read = centreFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = centreByCount(read.value);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(outcome.value, read.value.pitch, bench) };
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
    offers: doubts.flatMap(likelier),
    warnings: doubts.map((doubt) => doubtWords(doubt, show)),
    cautions: [words.punch],
    listsLast: true,
    runs: run ? [{ name: words.title, item: words.hole, run }] : [],
    figures: [{ name: words.row, draw: () => countedRow(holes, pitchMm) }],
    workings: [{ formula: words.formula(holes), source: words.source }],
  };
}

function likelier(doubt: CountDoubt): Offer[] {
  if (doubt.kind !== 'length-differs' || doubt.likelier === undefined) return [];
  const count = String(doubt.likelier);
  return [{ words: `${count} ${words.holes}`, take: centreFields.typing({ count }) }];
}

function placesOf(eighths: Counted['eighths'], which: readonly number[]): string {
  return which.flatMap((i) => (eighths[i] ? [words.place(eighths[i])] : [])).join('; ');
}

function doubtWords(doubt: CountDoubt, show: (x: ExactLength) => string): string {
  if (doubt.kind === 'ends-differ') return words.endsDiffer(doubt.count, doubt.other);
  return words.lengthDiffers(show(doubt.expected), show(doubt.measured), doubt.likelier);
}
