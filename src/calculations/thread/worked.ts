import { needed } from '../../calculation/needed.ts';
import { mapped, type Outcome, type Problem, refused } from '../../sewing/problem.ts';
import {
  fillsFor,
  handThreads,
  sizesOf,
  spoolsFor,
  type Thread,
  type ThreadSizes,
  threadFor,
} from '../../sewing/seams/thread.ts';
import type { ThreadAsked } from './fields.ts';

/** Thread as it is asked for, and what is bought, wound and cut of it where that is asked. */
export interface Worked {
  thread: Thread;
  spools: number | undefined;
  fills: number | undefined;
  hand: number | undefined;
  sizes: ThreadSizes | undefined;
}

/** All of it, or everything that is wrong. */
export function threadOf(asked: ThreadAsked): Outcome<Worked> {
  const found = threadFor(asked);
  if (!found.ok) return found;
  const thread = found.value;
  const { stitch, spool, bobbin, tex } = asked;
  const parts = {
    spools: spool === undefined ? undefined : spoolsFor(stitch, thread, spool),
    fills: bobbin === undefined ? undefined : fillsFor(thread, bobbin),
    hand: stitch === 'hand' ? byHand(asked, thread) : undefined,
    sizes: tex === undefined ? undefined : sizesOf(tex),
  };
  const problems = Object.values(parts).flatMap((one): readonly Problem[] =>
    one && !one.ok ? one.problems : [],
  );
  const [first, ...more] = problems;
  if (first) return refused(first, ...more);
  const value = <Of>(one: Outcome<Of> | undefined) => (one?.ok ? one.value : undefined);
  return mapped(found, () => ({
    thread,
    spools: value(parts.spools),
    fills: value(parts.fills),
    hand: value(parts.hand),
    sizes: value(parts.sizes),
  }));
}

/** Threads that are cut for sewing by hand. */
export function byHand(
  { working, tail }: Pick<ThreadAsked, 'working' | 'tail'>,
  thread: Thread,
): Outcome<number> {
  const long = needed({ working, tail });
  return handThreads(thread, long.working, long.tail);
}
