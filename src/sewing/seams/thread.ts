import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, mapped, type Outcome, type Problem } from '../problem.ts';
import { COTTON_TICKET, type StitchKind, THREADS, TICKET } from '../sources/thread.ts';
import { type Ratio, type RatioInput, threadRatio } from './thread-ratio.ts';

/** The most times a seam is sewn over. */
const MOST_PASSES = 20;

export interface ThreadInput extends RatioInput {
  /** How long each seam is; there may be none. */
  seams: readonly Length[];
  /** How often each is sewn. */
  passes: number;
  /** Left at each end of each pass, or chained off. */
  end: Length;
  /** Per cent of what is sewn that is lost. */
  waste: number;
}

/** Thread for seams of one kind, in 1/8000 mm, with its ends and waste. */
export interface Thread extends Ratio {
  /** Of each seam. */
  each: readonly ExactLength[];
  all: ExactLength;
  /** Of it the needle threads, and the bobbin's or loopers'; undefined where nobody says. */
  byNeedle: ExactLength | undefined;
  byOther: ExactLength | undefined;
}

/**
 * Thread for seams of one kind: ratio × passes × (length + two ends) × (1 + waste). The ends are sewn
 * off or held back in all threads, so they take the ratio, too: more than a tail of each thread, which
 * is on the safe side (derived here).
 *
 * Problems: those of the ratio, a seam of nothing, an end or waste of less, waste over 100 %.
 */
export function threadFor(input: ThreadInput): Outcome<Thread> {
  return answerUnless(problemsOf(input), () =>
    mapped(threadRatio(input), (ratio) => {
      const { seams, passes, end, waste } = input;
      const sewn = (long: number) => passes * (long + 2 * end) * (1 + waste / 100);
      const each = seams.map((long) => settled(exactLength(ratio.ratio * sewn(long))));
      const all = settled(exactLength(each.reduce<number>((sum, one) => sum + one, 0)));
      const share = ratio.needle === undefined ? undefined : ratio.needle / ratio.ratio;
      const byNeedle = share === undefined ? undefined : settled(exactLength(share * all));
      const byOther = byNeedle === undefined ? undefined : settled(exactLength(all - byNeedle));
      return { ...ratio, each, all, byNeedle, byOther };
    }),
  );
}

function problemsOf({ seams, passes, end, waste }: ThreadInput): Problem[] {
  return [
    ...seams.flatMap((one) => mustBePositive('seams', one)).slice(0, 1),
    ...mustBeCount('passes', passes, 1, MOST_PASSES),
    ...mustNotBeNegative('end', end),
    ...(waste < 0 || waste > 100
      ? [{ kind: 'out-of-range', field: 'waste', given: waste, least: 0, most: 100 } as const]
      : []),
  ];
}

/** A bobbin under the machine is filled from the spool that the needle sews from. */
export function hasBobbin(stitch: StitchKind): boolean {
  return stitch === 'lock' || stitch === 'zigzag';
}

/** How many threads are fed at once, each from a spool of its own: a bobbin is filled from the needle's. */
export function fedAtOnce(stitch: StitchKind): number {
  return hasBobbin(stitch) ? 1 : THREADS[stitch];
}

/**
 * Spools to have: ⌈all ÷ spool⌉ where a bobbin is filled from the needle's or there is one thread;
 * else each thread is fed from its own spool and nothing is wound over: Σ⌈share ÷ spool⌉, at least
 * one each. Where nobody says how much each takes, ⌈all ÷ spool⌉ + threads − 1, which no sharing
 * exceeds (derived here).
 *
 * Problems: a spool of nothing.
 */
export function spoolsFor(stitch: StitchKind, thread: Thread, spool: Length): Outcome<number> {
  return answerUnless(mustBePositive('spool', spool), () => {
    const threads = fedAtOnce(stitch);
    const spools = (long: ExactLength) => Math.ceil(settled(long) / spool);
    if (thread.all <= 0) return { ok: true, value: 0 };
    if (threads === 1) return { ok: true, value: spools(thread.all) };
    const { byNeedle, byOther } = thread;
    if (threads > 2 || byNeedle === undefined || byOther === undefined) {
      return { ok: true, value: spools(thread.all) + threads - 1 };
    }
    return { ok: true, value: Math.max(1, spools(byNeedle)) + Math.max(1, spools(byOther)) };
  });
}

/** How often a bobbin is filled: ⌈its thread ÷ what it holds⌉. Problems: a bobbin that holds nothing. */
export function fillsFor({ byOther }: Thread, bobbin: Length): Outcome<number> {
  return answerUnless(mustBePositive('bobbin', bobbin), () => ({
    ok: true,
    value: Math.ceil(settled(byOther ?? exactLength(0)) / bobbin),
  }));
}

/**
 * How many threads are cut for sewing by hand: ⌈need ÷ (length worked with − what is left of each)⌉.
 *
 * Problems: a thread of nothing, or all of which is left over.
 */
export function handThreads({ all }: Thread, working: Length, tail: Length): Outcome<number> {
  const alone = [...mustBePositive('working', working), ...mustNotBeNegative('tail', tail)];
  const problems: Problem[] =
    alone.length === 0 && working <= tail
      ? [{ kind: 'not-over', field: 'working', over: tail, given: working }]
      : alone;
  return answerUnless(problems, () => ({
    ok: true,
    value: Math.ceil(settled(all) / (working - tail)),
  }));
}

/** How thick a thread is, as it is sold. */
export interface ThreadSizes {
  /** Ticket numbers: metric, and of cotton. */
  ticket: number;
  cotton: number;
  denier: number;
  /** Metres that weigh a gram. */
  metric: number;
}

/**
 * A thread's sizes by its tex, grams to a kilometre: ticket 3000 ÷ tex, of cotton 1771.62 ÷ tex
 * (`sources/thread.ts`); denier, grams to 9 km, and metres to a gram are by definition.
 *
 * Problems: a tex under 1 or over 1000.
 */
export function sizesOf(tex: number): Outcome<ThreadSizes> {
  const problems: Problem[] =
    tex >= 1 && tex <= 1000
      ? []
      : [{ kind: 'out-of-range', field: 'tex', given: tex, least: 1, most: 1000 }];
  return answerUnless(problems, () => ({
    ok: true,
    value: {
      ...{ ticket: TICKET.value / tex, cotton: COTTON_TICKET.value / tex },
      ...{ denier: 9 * tex, metric: 1000 / tex },
    },
  }));
}
