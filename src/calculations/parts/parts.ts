import { partsWords as words } from '#words/calculations/parts-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Line, NamedRun, Work } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { byTape, exactly, numberOnTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import {
  type EqualParts,
  equalParts,
  followedMarks,
  type PartsInput,
} from '../../sewing/equal-parts.ts';
import { placesOf } from '../../sewing/followed-places.ts';
import type { Run } from '../../sewing/run.ts';
import { type PartsAsked, partsFields, partsInput } from './fields.ts';

/** Marks that divide an edge, or two that meet, into equal parts. */
export const parts: Calculation = {
  id: 'parts',
  title: words.title,
  ...partsFields.asked,
  work(draft, bench) {
    const read = partsFields.read(draft, bench);
    if (!read.ok) return read;
    const { follow } = read.value;
    if (follow) return following(read.value, follow, bench);
    const input = { ...partsInput(read.value), other: read.value.other };
    const outcome = equalParts(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(outcome.value, input, bench) };
  },
};

/** Marks where those of another edge are. */
function following(asked: PartsAsked, follow: Run, bench: Bench): Work {
  const outcome = followedMarks(asked, placesOf(follow, asked.offset));
  if (!outcome.ok) return refusedFor(outcome.problems);
  const { edge, other } = outcome.value;
  const further = asked.offset === ZERO ? '' : exactly(asked.offset, bench);
  return {
    ok: true,
    answer: {
      headline: { number: String(edge.marks.length), after: words.marks(edge.marks.length) },
      sentence: words.followed(edge.marks.length, further),
      lines: [],
      offers: [],
      warnings: [],
      cautions: [cautionWords.pins],
      runs: runsOf(edge, other),
      workings: [
        {
          formula: other
            ? words.followedFormula(exactly(asked.length, bench), exactly(other.length, bench))
            : '',
          source: words.source,
        },
      ],
    },
  };
}

function runsOf(edge: Run, other: Run | undefined): NamedRun[] {
  const item = words.mark;
  return [
    { name: words.thisEdge, item, run: edge },
    ...(other ? [{ name: words.otherEdge, item, run: other }] : []),
  ];
}

function answer({ edge, other, longer }: EqualParts, input: PartsInput, bench: Bench): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const part = numberOnTape(edge.part, bench);
  const marks = edge.run.marks.length;
  return {
    headline: { before: part.rounded ? words.about : '', number: part, after: words.after },
    sentence: input.round ? words.closed(marks) : words.open(marks),
    lines:
      other && longer !== undefined ? otherLines(byTape(other.part, bench), longer, bench) : [],
    offers: [],
    warnings: [],
    cautions: [cautionWords.pins],
    runs: runsOf(edge.run, other?.run),
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
