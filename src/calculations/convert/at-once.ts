import { convertWords as words } from '#words/calculations/convert-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { readLengthOf } from '../../calculation/draft.ts';
import type { Paged } from '../../calculation/page.ts';
import { STEP } from '../../lengths/graduation.ts';
import { type ExactLength, type Length, mm, toMm } from '../../lengths/length.ts';
import { remainder, showExact, shownText, showOnTape } from '../../lengths/show-length.ts';
import type { Run } from '../../sewing/run.ts';

/**
 * Any length in both systems, as far as the first answer of the app needs it: the number
 * and what to do with it. Its further lines come just after it, with `convert`.
 */
export const convertAtOnce: Paged = {
  id: 'convert',
  title: words.title,
  start: (bench) => ({ length: bench.unit === 'in' ? '5/8' : '5/8 in' }),
  part: ({ length, ...page }) => ({ draft: length === undefined ? {} : { length }, page }),
  fields: () => [{ kind: 'length', key: 'length', label: words.length }],
  work(draft, bench) {
    const read = readLengthOf(draft, 'length', bench);
    if (!read.ok) return read;
    const length = read.value;
    if (length < 0) {
      return {
        ok: false,
        faults: [{ field: 'length', why: { of: 'words', words: words.negative } }],
      };
    }
    return { ok: true, answer: answer(length, isInInches(draft.length ?? '', bench), bench) };
  },
  beside: [{ id: 'sizes', label: words.beside }],
};

/** The first unit written; `x` multiplies. */
const UNIT = /[a-wyz"'‘’“”′″]+/i;

/** Whether a length was typed in inches, or another unit of that tape. */
export function isInInches(typed: string, bench: Bench): boolean {
  return !/^[cm]?m$/i.test(UNIT.exec(typed)?.[0] ?? bench.unit);
}

/** A length on the tape of the other system, and what lies beside its graduation. */
function answer(length: Length, wasInches: boolean, bench: Bench): Answer {
  const unit = wasInches ? (bench.unit === 'mm' ? 'mm' : 'cm') : 'in';
  const step = STEP[wasInches ? bench.metric : bench.inch];
  const left = remainder(length, step);
  const exact = showExact(length, wasInches ? 'mm' : 'in');
  return {
    headline: { number: showOnTape(length, step, unit), after: '' },
    sentence: words.sentence(
      shownText(exact, bench.decimalMark),
      exact.rounded,
      left === 0
        ? undefined
        : shownText(showExact(Math.abs(left) as ExactLength, 'mm', 3), bench.decimalMark),
      left < 0,
    ),
    lines: [],
    offers: [],
    warnings: [],
    cautions: [],
    runs: [{ name: words.title, item: words.length, run: onRun(length) }],
    workings: [],
  };
}

/** The length as a run with one mark, with some tape beyond it. */
function onRun(length: Length): Run {
  return {
    datum: 'zero',
    length: mm(Math.max(10, toMm(length) * 1.2)),
    marks: [{ at: length, label: '', kind: 'measure' }],
  };
}
