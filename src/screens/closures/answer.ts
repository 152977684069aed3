import { type Bench, tapeStep } from '../../controls/bench.ts';
import type { Answer, Draft, Line, Offer, Working } from '../../controls/calculation.ts';
import { exactly, numberOnTape, onTape } from '../../controls/tape-text.ts';
import type { ClosuresInput } from '../../sewing/closure-input.ts';
import type { ClosureRow, Stretch } from '../../sewing/closure-row.ts';
import type { ClosurePlan } from '../../sewing/closures.ts';
import { markOut } from '../../sewing/marks.ts';
import { closuresWords as words } from '../../words/closures-words.ts';
import type { Beside } from './beside.ts';
import { itemOf } from './fields.ts';

/** A row of closures as an answer. */
export function closuresAnswer(
  plan: ClosurePlan,
  input: ClosuresInput,
  draft: Draft,
  bench: Bench,
  beside: Beside,
): Answer {
  const item = words.items[itemOf(draft)];
  const coarse = markOut(plan.run, tapeStep(bench)).tooCoarse;
  return {
    headline: headline(plan, bench),
    sentence: words.sentence(
      plan.count,
      item,
      onTape(plan.ends.top, bench),
      pitches(plan.stretches, bench),
    ),
    lines: [...rowLines(plan, bench), ...beside.lines],
    offers: offers(plan, input, draft, bench),
    warnings: [...(coarse ? [words.coarse] : []), ...offLevel(plan, bench)],
    cautions: [beside.caution],
    runs: [{ name: words.title, item: item.one, run: plan.run }],
    workings: [
      working(plan, input, bench),
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

/** "3 × 7.1 cm, 3 × 6.9 cm", when not all spaces are alike. */
function pitches(stretches: readonly Stretch[], bench: Bench): string {
  if (stretches.length < 2) return '';
  return stretches
    .map(({ spaces, pitch, asMade }) => words.stretch(spaces, exactly(pitch, bench), asMade))
    .join(', ');
}

function rowLines(row: ClosureRow, bench: Bench): Line[] {
  const lines = [
    {
      label: words.endsLabel,
      value: words.endsOf(exactly(row.ends.top, bench), exactly(row.ends.bottom, bench)),
    },
  ];
  if (row.gap !== undefined) lines.push({ label: words.gap, value: exactly(row.gap, bench) });
  if (row.remainder) {
    const { above, below } = row.remainder;
    lines.push({
      label: words.left,
      value: words.leftOf(above === 0 ? undefined : exactly(above, bench), exactly(below, bench)),
    });
  }
  return lines;
}

/** What else could be done: the other answer to a level, or an even pitch without remainder. */
function offers(plan: ClosurePlan, input: ClosuresInput, draft: Draft, bench: Bench): Offer[] {
  const { level, remainder, count } = plan;
  const found: Offer[] = [];
  const exact = input.rule.by === 'exact' || input.rule.by === 'gap';
  if (level && !exact) {
    const other = input.levelBy === 'moved-ends' ? level.twoPitches : level.movedEnds;
    if (other) found.push(levelOffer(other, input, draft, bench));
  }
  if (remainder && remainder.above + remainder.below > 0) {
    found.push({
      words: words.evenly(count),
      take: { ...draft, by: 'count', count: String(count) },
    });
  }
  return found;
}

function levelOffer(row: ClosureRow, input: ClosuresInput, draft: Draft, bench: Bench): Offer {
  const movesEnds = input.levelBy !== 'moved-ends';
  const list = row.stretches.map(({ spaces, pitch }) =>
    words.stretch(spaces, exactly(pitch, bench), false),
  );
  const ends = words.endsOf(exactly(row.ends.top, bench), exactly(row.ends.bottom, bench));
  return {
    words: movesEnds
      ? words.orMovedEnds(list.join(', '), ends)
      : words.orTwoPitches(list.join(', ')),
    take: { ...draft, levelBy: movesEnds ? 'moved-ends' : 'two-pitches' },
  };
}

function offLevel(plan: ClosurePlan, bench: Bench): string[] {
  const { level } = plan;
  return level && level.off !== 0
    ? [words.offLevel(exactly(Math.abs(level.off) as typeof level.off, bench), level.off > 0)]
    : [];
}

/** The formula with its numbers, for the rule that was used. */
function working(plan: ClosurePlan, input: ClosuresInput, bench: Bench): Working {
  const show = (x: Parameters<typeof exactly>[0]) => exactly(x, bench);
  const opening = show(input.opening);
  const [first] = plan.stretches;
  const source = words.source;
  if (input.sewn?.length) return { formula: words.aroundFormula(input.sewn.length), source };
  if (!first)
    return { formula: words.oneFormula(opening, show(input.top), show(input.bottom)), source };
  if (plan.level) return { formula: words.levelFormula(show(plan.level.at)), source };
  const pitch = show(first.pitch);
  if (plan.remainder)
    return { formula: words.exactFormula(plan.count, pitch, show(plan.remainder.below)), source };
  if (input.ends !== 'given') {
    const spaces = plan.count + (input.ends === 'whole' ? 1 : 0);
    return { formula: words.sharesFormula(opening, spaces, pitch), source };
  }
  return {
    formula: words.evenFormula(opening, show(input.top), show(input.bottom), plan.count - 1, pitch),
    source,
  };
}
