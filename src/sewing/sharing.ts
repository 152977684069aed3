import { toGraduation } from '../lengths/graduation.ts';
import { type ExactLength, exactLength, type Length, length } from '../lengths/length.ts';
import { mustBeCount, mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';

/** The most of one kind a change is shared over. */
const MOST_PLACES = 60;
/** Shares typed with decimals may come this near to 100. */
const ABOUT = 0.5;
/** How far from its exact share, in graduations, one is tried: six of a kind may be made up for by one. */
const TRIED = 6;

/** Places that all change alike: the edges of side seams, a pair of darts. */
export interface Sharing {
  /** The field its number is in. */
  field: string;
  count: number;
  /** Of one of them, per cent of the whole. */
  share: number;
}

export interface SharesInput {
  /** All that is to be gained or lost. */
  change: Length;
  kinds: readonly Sharing[];
  /** What each is a whole number of. */
  step: Length;
}

export interface Shares {
  /** Of one of each kind, in their order. */
  each: readonly Length[];
  /** Each as it would be in no whole steps. */
  exact: readonly ExactLength[];
  /** What of the change is in none of them; less than nothing where they take more. */
  left: ExactLength;
}

/**
 * A change shared over kinds with counts cᵢ in whole steps: mᵢ ≥ 0 with Σcᵢmᵢ as near to the change
 * in whole steps as their counts let it, and then the least Σcᵢ(mᵢ − xᵢ)², where xᵢ is the exact share.
 * So both sides change alike, and what the counts can't carry is told rather than lost (derived here).
 * Of two as good the one that takes less.
 *
 * Problems: a change or step of nothing, no kinds, a count that is none, a share of less than nothing, shares
 * that don't come to 100.
 */
export function shareOut(input: SharesInput): Outcome<Shares> {
  return answerUnless(shareProblems(input), () => {
    const { change, kinds, step } = input;
    const exact = kinds.map(({ share }) => exactLength((change * share) / 100));
    const target = toGraduation(change, step) / step;
    const counts = kinds.map(({ count }) => count);
    const steps = nearest(
      counts,
      exact.map((one) => one / step),
      target,
    );
    const each = steps.map((one) => length(one * step));
    return { ok: true, value: { each, exact, left: leftOf(change, kinds, each) } };
  });
}

/** What of a change is in none of the places, as they are. */
function leftOf(
  change: Length,
  kinds: readonly Pick<Sharing, 'count'>[],
  each: readonly ExactLength[],
): ExactLength {
  return exactLength(
    kinds.reduce<number>((rest, { count }, i) => rest - count * (each[i] ?? 0), change),
  );
}

/** One way through the kinds so far: how many steps each takes, and how far that is from its share. */
interface Way {
  steps: readonly number[];
  off: number;
}

/** Of all ways to the same sum only the best is followed on. */
function nearest(
  counts: readonly number[],
  exact: readonly number[],
  target: number,
): readonly number[] {
  let ways = new Map<number, Way>([[0, { steps: [], off: 0 }]]);
  for (const [i, count] of counts.entries()) {
    const wanted = exact[i] ?? 0;
    const next = new Map<number, Way>();
    for (const [sum, way] of ways) {
      for (let step = Math.round(wanted) - TRIED; step <= Math.round(wanted) + TRIED; step += 1) {
        // What has no share is left as it is, whatever is left over.
        if (step < 0 || (wanted === 0 && step > 0)) continue;
        const off = way.off + count * (step - wanted) ** 2;
        const before = next.get(sum + count * step);
        if (before && before.off <= off) continue;
        next.set(sum + count * step, { steps: [...way.steps, step], off });
      }
    }
    ways = next;
  }
  const rest = (sum: number) => Math.abs(target - sum);
  const [best] = [...ways].sort(
    ([one, { off }], [other, way]) => rest(one) - rest(other) || off - way.off || one - other,
  );
  return best?.[1].steps ?? [];
}

function wholeShares(kinds: readonly Sharing[]): number {
  return kinds.reduce((sum, { count, share }) => sum + count * share, 0);
}

function shareProblems({ change, kinds, step }: SharesInput): Problem[] {
  const alone = [
    ...mustBePositive('change', change),
    ...mustBePositive('step', step),
    ...kinds.flatMap(({ field, count }) => mustBeCount(field, count, 1, MOST_PLACES)),
    ...kinds.flatMap(({ field, share }): Problem[] =>
      share < 0 ? [{ kind: 'below-nothing', field: `${field}Share`, given: share }] : [],
    ),
  ];
  if (alone.length > 0) return alone;
  const whole = wholeShares(kinds);
  if (Math.abs(whole - 100) <= ABOUT) return [];
  const [first] = kinds;
  return [{ kind: 'not-hundred', field: first ? `${first.field}Share` : 'change', given: whole }];
}
