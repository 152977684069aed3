import { partsWords as words } from '#words/parts-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Draft, Line } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { countOf, roundIn } from '../../calculation/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { byTape, exactly, numberOnTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type EqualParts, equalParts, type PartsInput } from '../../sewing/equal-parts.ts';

const { length, optional, count, choice } = fieldsCalled(words.labels);

const PARTS = { quarters: 4, halves: 2, eighths: 8 } as const;

/** Marks that divide an edge, or two that meet, into equal parts. */
export const parts: Calculation = {
  id: 'parts',
  title: words.title,
  start: (bench) => ({
    length: roundIn(bench)('72', '720', '28'),
    into: 'quarters',
    count: '6',
    round: 'closed',
    other: '',
  }),
  fields: (draft) => [
    length('length'),
    optional('other', words.notGiven),
    choice('into', words.into),
    ...(chosen(draft, 'into', words.into) === 'other' ? [count('count')] : []),
    choice('round', words.round),
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const edge = read.length('length');
    const other = read.maybeLength('other');
    const into = partsOf(read, draft);
    if (edge === undefined || into === undefined || read.faults.length > 0) {
      return { ok: false, faults: read.faults };
    }
    const round = chosen(draft, 'round', words.round) === 'closed';
    const input: PartsInput = { length: edge, parts: into, round, other };
    const outcome = equalParts(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(outcome.value, input, bench) };
  },
};

function partsOf(read: DraftReader, draft: Draft): number | undefined {
  const into = chosen(draft, 'into', words.into);
  return into === 'other' ? countOf(read, 'count') : PARTS[into];
}

function answer({ edge, other, longer }: EqualParts, input: PartsInput, bench: Bench): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const part = numberOnTape(edge.part, bench);
  const marks = edge.run.marks.length;
  const item = words.mark;
  return {
    headline: { before: part.rounded ? words.about : '', number: part, after: words.after },
    sentence: input.round ? words.closed(marks) : words.open(marks),
    lines:
      other && longer !== undefined ? otherLines(byTape(other.part, bench), longer, bench) : [],
    offers: [],
    warnings: [],
    cautions: [words.pins],
    runs: [
      { name: words.thisEdge, item, run: edge.run },
      ...(other ? [{ name: words.otherEdge, item, run: other.run }] : []),
    ],
    workings: workings(input, edge.part, longer, show),
  };
}

function otherLines(part: string, longer: ExactLength, bench: Bench): Line[] {
  const by = byTape(exactLength(Math.abs(longer)), bench);
  const said = longer > 0 ? words.longer(by) : longer < 0 ? words.shorter(by) : words.same;
  return [
    { label: words.otherPart, value: part },
    { label: words.differs, value: said },
  ];
}

function workings(
  { length: edge, other, parts: into }: PartsInput,
  part: ExactLength,
  longer: ExactLength | undefined,
  show: (x: ExactLength) => string,
): Answer['workings'] {
  const formulas = [words.formula(show(edge), into, show(part))];
  if (other !== undefined && longer !== undefined) {
    formulas.push(words.eachFormula(show(other), show(edge), into, show(longer)));
  }
  return [{ formula: formulas.join(' '), source: words.source }];
}
