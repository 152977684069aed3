import { closuresWords as words } from '#words/calculations/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Draft, Offer } from '../../calculation/calculation.ts';
import { byTape } from '../../calculation/tape-text.ts';
import type { ClosuresInput } from '../../sewing/closures/closure-input.ts';
import type { ClosureRow, Stretch } from '../../sewing/closures/closure-row.ts';
import type { ClosurePlan } from '../../sewing/closures/closures.ts';
import type { ClosuresTyped } from './fields.ts';

/** What else could be done: the other answer to a level, or an even pitch without remainder. */
export function offers(
  plan: ClosurePlan,
  input: ClosuresInput,
  draft: Draft,
  bench: Bench,
): Offer[] {
  const { level, remainder, count } = plan;
  const found: Offer[] = [];
  const exact = input.rule.by === 'exact' || input.rule.by === 'gap';
  if (level && !exact) {
    const other = input.levelBy === 'moved-ends' ? level.twoPitches : level.movedEnds;
    if (other) found.push(levelOffer(other, input, draft, bench));
  }
  if (remainder && remainder.above + remainder.below > 0) {
    const take: ClosuresTyped = { by: 'count', count: String(count), levelBy: 'two-pitches' };
    // Two cannot carry first, last and a level.
    if (!level || count !== 2)
      found.push({ words: words.evenly(count), take: { ...draft, ...take } });
  }
  return found;
}

function levelOffer(row: ClosureRow, input: ClosuresInput, draft: Draft, bench: Bench): Offer {
  const movesEnds = input.levelBy !== 'moved-ends';
  const typed: ClosuresTyped = { levelBy: movesEnds ? 'moved-ends' : 'two-pitches' };
  const list = listed(row.stretches, bench);
  const ends = words.endsOf(byTape(row.ends.top, bench), byTape(row.ends.bottom, bench));
  return {
    words: movesEnds ? words.orMovedEnds(list, ends) : words.orTwoPitches(list),
    take: { ...draft, ...typed },
  };
}

/** Stretches as they follow each other: "3 × 7.1 cm, 3 × 6.9 cm". */
export function listed(stretches: readonly Stretch[], bench: Bench): string {
  return stretches
    .map(({ spaces, pitch, asMade }) => words.stretch(spaces, byTape(pitch, bench), asMade))
    .join(', ');
}
