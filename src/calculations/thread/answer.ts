import { threadAnswerWords as words } from '#words/calculations/thread-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { UNITS_PER } from '../../lengths/unit.ts';
import { fedAtOnce, hasBobbin } from '../../sewing/seams/thread.ts';
import { guideOf } from '../../sewing/seams/thread-ratio.ts';
import { RATIOS, THREADS } from '../../sewing/sources/thread.ts';
import type { ThreadAsked } from './fields.ts';
import type { Worked } from './worked.ts';
import { threadWorkings } from './workings.ts';

/** A sample under it tells little: common practice, no source. */
const SHORT_SAMPLE = mm(75);

/** Thread as an answer. */
export function threadAnswer(asked: ThreadAsked, worked: Worked, bench: Bench): Answer {
  const { ratio, all } = worked.thread;
  const { seams } = asked;
  return {
    headline: { number: largeText(all, bench), after: words.after },
    sentence:
      seams.length === 0
        ? words.nothing
        : words.sentence(shownNumber(ratio, 2, bench.decimalMark), seams.length),
    lines: lines(asked, worked, bench),
    offers: [],
    warnings: warnings(asked, worked),
    cautions: asked.stitch === 'hand' ? [] : [words.machine],
    runs: [],
    workings: threadWorkings(asked, worked, bench),
  };
}

function lines(asked: ThreadAsked, worked: Worked, bench: Bench): Line[] {
  const { thread, spools, fills, hand, sizes } = worked;
  const { stitch, seams } = asked;
  const number = (value: number, places = 2) => shownNumber(value, places, bench.decimalMark);
  const long = (one: ExactLength | undefined) =>
    one === undefined ? undefined : onTape(one, bench, upToGraduation);
  const parts = THREADS[stitch] > 1;
  const found: [string, string | undefined][] = [
    [words.inAll, long(thread.all)],
    [words.ratio, number(thread.ratio)],
    [words.least, thread.least === undefined ? undefined : number(thread.least)],
    [words.tables, tables(asked, number)],
    [words.needle, parts ? long(thread.byNeedle) : undefined],
    [words.other[hasBobbin(stitch) ? 'wound' : 'looped'], parts ? long(thread.byOther) : undefined],
    ...(seams.length > 1
      ? thread.each.map((one, i): [string, string] => [words.each(i + 1), long(one) ?? ''])
      : []),
    [words.spools, spools === undefined ? undefined : spoolsText(asked, worked)],
    [words.fills, fills === undefined ? undefined : String(fills)],
    [words.hand, hand === undefined ? undefined : String(hand)],
    [words.ticket, sizes && number(sizes.ticket, 0)],
    [words.cotton, sizes && number(sizes.cotton, 0)],
    [words.denier, sizes && number(sizes.denier, 0)],
    [words.metric, sizes && number(sizes.metric, 1)],
  ];
  return found.flatMap(([label, value]) => (value === undefined ? [] : [{ label, value }]));
}

/** As thread is sold: metres or yards to a tenth, no less than it is. */
function largeText(long: ExactLength, { unit, decimalMark }: Bench): string {
  const inches = unit === 'in';
  const many = (10 * long) / UNITS_PER[inches ? 'yd' : 'm'];
  const up = Math.ceil(many - 1e-9) / 10;
  return words.unit[inches ? 'yards' : 'metric'](shownNumber(up, 1, decimalMark));
}

/** What the tables say of it where another way was taken, or the other of them. */
function tables({ stitch }: ThreadAsked, number: (value: number) => string): string | undefined {
  const [one, other] = [RATIOS.value[stitch], guideOf(stitch)];
  if (one !== undefined && other !== undefined && one !== other) {
    return words.tablesOf(number(one), number(other));
  }
  const only = one ?? other;
  return only === undefined ? undefined : number(only);
}

function spoolsText({ stitch }: ThreadAsked, { thread, spools = 0 }: Worked): string {
  return words.spoolsOf(spools, fedAtOnce(stitch), isBound(stitch, thread.byNeedle));
}

/** However so many threads share it: the spools are the most there can be. */
function isBound(stitch: ThreadAsked['stitch'], byNeedle: ExactLength | undefined): boolean {
  return THREADS[stitch] > 2 || (THREADS[stitch] === 2 && byNeedle === undefined);
}

function warnings(asked: ThreadAsked, { thread, spools }: Worked): string[] {
  const { by, stitch, sampleSeam, seams } = asked;
  return [
    ...(by === 'sample' || seams.length === 0 ? [] : [words.wide]),
    ...(by === 'sample' && sampleSeam !== undefined && sampleSeam < SHORT_SAMPLE
      ? [words.samples]
      : []),
    ...(spools !== undefined && isBound(stitch, thread.byNeedle) ? [words.noShares] : []),
  ];
}
