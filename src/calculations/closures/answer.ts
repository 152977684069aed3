import { closuresWords as words } from '#words/calculations/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Line } from '../../calculation/calculation.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { exactLength } from '../../lengths/length.ts';
import type { ClosuresInput } from '../../sewing/closures/closure-input.ts';
import type { ClosureRow, Stretch } from '../../sewing/closures/closure-row.ts';
import type { ClosurePlan } from '../../sewing/closures/closures.ts';
import { leastStep } from '../../sewing/made-run.ts';
import type { Run } from '../../sewing/run.ts';
import type { Beside } from './beside.ts';
import { doubts } from './doubts.ts';
import { closuresFormula } from './formula.ts';
import { listed, offers } from './offers.ts';

/** A row of closures as an answer. */
export function closuresAnswer(
  plan: ClosurePlan,
  input: ClosuresInput,
  draft: Draft,
  bench: Bench,
  beside: Beside,
): Answer {
  const linesOf = (row: ClosureRow) => [...rowLines(row, bench), ...beside.lines];
  return {
    headline: headline(plan, bench),
    sentence: sentence(plan, beside.item, bench),
    lines: linesOf(plan),
    linesMade: ([made]) => linesOf(made ? asMade(plan, input, made.run) : plan),
    offers: offers(plan, input, draft, bench),
    warnings: doubts(plan, input, bench),
    cautions: [beside.caution],
    runs: [{ name: words.title, item: beside.item.one, run: plan.run }],
    workings: [
      { formula: closuresFormula(plan, input, beside.offset, bench), source: words.source },
      ...beside.sources.map((source) => ({ formula: '', source })),
    ],
  };
}

/** The pitch where there is one; the place where a single closure stands. */
function headline(plan: ClosurePlan, bench: Bench): Answer['headline'] {
  const [first] = plan.stretches;
  if (!first) {
    const place = plan.run.marks[0]?.at ?? plan.ends.top;
    return { number: numberOnTape(place, bench), after: words.fromTop };
  }
  const shown = numberOnTape(first.pitch, bench);
  const even = plan.stretches.length === 1;
  return { before: shown.rounded ? words.about : '', number: shown, after: words.apart(even) };
}

function sentence(plan: ClosurePlan, item: Beside['item'], bench: Bench): string {
  const first = onTape(plan.ends.top, bench);
  return plan.count === 1
    ? words.one(item, first)
    : words.sentence(plan.count, item, first, pitches(plan.stretches, bench));
}

/** "3 × 7.1 cm, 3 × 6.9 cm", when not all spaces are alike. */
function pitches(stretches: readonly Stretch[], bench: Bench): string {
  return stretches.length < 2 ? '' : listed(stretches, bench);
}

/** The row with its ends and its least gap as its marks were made. */
function asMade(row: ClosureRow, { width }: ClosuresInput, run: Run): ClosureRow {
  const [first, last] = [run.marks[0], run.marks.at(-1)];
  if (!first || !last) return row;
  const least = width === undefined ? undefined : leastStep(run);
  return {
    ...row,
    ends: { top: first.at, bottom: exactLength(row.run.length - last.at) },
    gap: least === undefined ? row.gap : exactLength(least - (width ?? 0)),
  };
}

function rowLines(row: ClosureRow, bench: Bench): Line[] {
  const lines = [
    {
      label: words.endsLabel,
      value: words.endsOf(byTape(row.ends.top, bench), byTape(row.ends.bottom, bench)),
    },
  ];
  if (row.gap !== undefined)
    lines.push({ label: words.gap, value: onTape(row.gap, bench, downToGraduation) });
  if (row.remainder) {
    const { above, below } = row.remainder;
    lines.push({
      label: words.left,
      value: words.leftOf(above === 0 ? undefined : byTape(above, bench), byTape(below, bench)),
    });
  }
  return lines;
}
