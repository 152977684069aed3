import { toFrame, toImage } from '../frame/frame.ts';
import { alongAt, tickAlong } from '../pitch/along.ts';
import type { Claim } from './claim.ts';
import type { ClaimOfRow } from './claimed-row.ts';
import { comparisons } from './comparisons.ts';
import { SAME_LINES_TICKS, SAME_NUMBER, SAME_READING_MM, WORTH_TICKS } from './limits.ts';

/**
 * The same lines are often found as several rows, each with other numbers of theirs read: those
 * that say the same become one claim with all its numbers, on the best of the rows.
 */
export function joinSameLines(rows: readonly ClaimOfRow[]): ClaimOfRow[] {
  const joined: ClaimOfRow[] = [];
  const best = [...rows].sort((one, other) => support(other.claim) - support(one.claim));
  for (const fresh of best) {
    const at = joined.findIndex((one) => saysTheSame(one, fresh));
    const same = joined[at];
    if (same) joined[at] = { ...same, claim: withNumbersOf(same, fresh) };
    if (!same || goesOn(same, fresh)) joined.push(fresh);
  }
  return joined;
}

/** Different numbers read, and then a known pattern of lines. */
function support({ agreeing, contrary, pattern, doubts }: Claim): number {
  const distinct = new Set(agreeing.map(({ value }) => value)).size;
  return distinct - 0.5 * contrary.length + (pattern.valid ? 1 : 0) - doubts.size;
}

function saysTheSame(one: ClaimOfRow, other: ClaimOfRow): boolean {
  if (one.claim.unit !== other.claim.unit) return false;
  const places = comparisons(one, other);
  return (
    places.length > 0 &&
    places.some(({ apartTicks }) => apartTicks < SAME_LINES_TICKS) &&
    places.every(({ differsMm }) => differsMm < SAME_READING_MM)
  );
}

/** Whether a row that says the same goes on well past the one that speaks for both: round a bend, or past a finger. */
function goesOn({ row: { range, ...known } }: ClaimOfRow, { row }: ClaimOfRow): boolean {
  const ends = row.range.map((tick) => {
    const [own] = toFrame(known.frame, toImage(row.frame, alongAt(row.pitch, tick), 0));
    return tickAlong(known.pitch, own);
  });
  const beyond = Math.max(range[0] - Math.min(...ends), Math.max(...ends) - range[1]);
  return beyond > WORTH_TICKS;
}

function withNumbersOf({ row, claim }: ClaimOfRow, other: ClaimOfRow): Claim {
  const known = new Set(claim.agreeing.map(({ value }) => value));
  const more = other.claim.agreeing
    .filter(({ value }) => !known.has(value))
    .map((number) => {
      const [u] = toFrame(row.frame, number.at);
      return { ...number, tick: tickAlong(row.pitch, u) };
    });
  const contrary = claim.contrary.filter(
    ({ tick }) =>
      !more.some((one) => Math.abs(one.tick - tick) < SAME_NUMBER * claim.ticksPerNumber),
  );
  return { ...claim, agreeing: [...claim.agreeing, ...more], contrary };
}
