import { doubtWords } from '#words/common/doubt-words.ts';
import { markWords } from '#words/common/mark-words.ts';
import { upToGraduation } from '../lengths/graduation.ts';
import { exactLength } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { readNumber } from '../lengths/read-number.ts';
import { shownNumber } from '../lengths/show-length.ts';
import { markOut } from '../sewing/marks.ts';
import { type Unusual, unusual } from '../sewing/unusual.ts';
import { type Bench, tapeStep } from './bench.ts';
import type { Answer, Calculation, Draft, Fault, Field, Work } from './calculation.ts';
import { onTape } from './tape-text.ts';

/** Which measure a field of a calculation holds. */
type MeasureOf = NonNullable<Calculation['measureOf']>;

/** A field that holds something unusual, and the end of the usual in words. */
interface OddField extends Unusual {
  field: Field;
  text: string;
}

/**
 * A calculation that also asks, at the field, about what is unusual, and says where the
 * tape is too coarse for its marks. It answers all the same; where it has to refuse, and
 * something unusual stands in another field than the one it would blame, that field is
 * named first.
 */
export function doubted(calculation: Calculation): Calculation {
  const measureOf: MeasureOf = calculation.measureOf ?? (() => undefined);
  return {
    ...calculation,
    work(draft, bench) {
      const work = calculation.work(draft, bench);
      const odd = oddFields(calculation.fields(draft), measureOf, draft, bench);
      const asked = odd.map(({ field, past, text }) => [field.key, doubtWords.ask(past, text)]);
      return {
        ...(work.ok
          ? { ok: true, answer: doubtedAnswer(work.answer, odd, bench) }
          : { ok: false, faults: [...blamed(work.faults, odd), ...work.faults] }),
        ...(odd.length > 0 && { odd: Object.fromEntries(asked) }),
      } satisfies Work;
    },
  };
}

function oddFields(
  fields: readonly Field[],
  measureOf: MeasureOf,
  draft: Draft,
  bench: Bench,
): OddField[] {
  return fields.flatMap((field) => {
    const measure = measureOf(field.key, draft);
    const value = readValue(field, draft[field.key] ?? '', bench);
    if (!measure || value === undefined) return [];
    const odd = unusual(measure, value);
    return odd ? [{ ...odd, field, text: endText(field, odd.end, bench) }] : [];
  });
}

function readValue({ kind }: Field, typed: string, bench: Bench): number | undefined {
  const read =
    kind === 'length'
      ? readLength(typed, bench.unit, bench.decimalMark)
      : kind === 'count' || kind === 'number'
        ? readNumber(typed)
        : undefined;
  return read?.ok ? read.value : undefined;
}

function endText({ kind }: Field, end: number, bench: Bench): string {
  return kind === 'length'
    ? onTape(exactLength(end), bench, upToGraduation)
    : shownNumber(end, 1, bench.decimalMark);
}

function doubtedAnswer(answer: Answer, odd: readonly OddField[], bench: Bench): Answer {
  const step = tapeStep(bench);
  const coarse = answer.runs.some(({ run }) => markOut(run, step).tooCoarse);
  if (!coarse && odd.length === 0) return answer;
  const sources = odd.map(({ field, past, text, source }) => ({
    formula: doubtWords.usual(field.label, past, text),
    source: doubtWords.source[source],
  }));
  return {
    ...answer,
    asked: odd.map(({ field, past, text }) => doubtWords.askOf(field.label, past, text)).join(' '),
    warnings: coarse ? [markWords.coarse, ...answer.warnings] : answer.warnings,
    workings: [...answer.workings, ...sources],
  };
}

/** What is unusual elsewhere, when only fields that hold something usual would be blamed. */
function blamed(faults: readonly Fault[], odd: readonly OddField[]): Fault[] {
  const byNumbers = faults.every(({ why }) => why.of === 'problem');
  const isOdd = ({ field }: Fault) => odd.some((one) => one.field.key === field);
  if (!byNumbers || faults.some(isOdd)) return [];
  return odd.map(({ field, past, text }) => ({
    field: field.key,
    why: { of: 'words', words: doubtWords.askOf(field.label, past, text) },
  }));
}
