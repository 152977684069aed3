import { needed } from '../../calculation/needed.ts';
import { mapped, type Outcome, type Problem, refused } from '../../sewing/problem.ts';
import {
  fillsFor,
  handThreads,
  spoolsFor,
  type Thread,
  threadFor,
  ticketOf,
} from '../../sewing/seams/thread.ts';
import type { ThreadAsked } from './fields.ts';

/** Thread as it is asked for, and what is bought, wound and cut of it where that is asked. */
export interface Worked {
  thread: Thread;
  spools: number | undefined;
  fills: number | undefined;
  hand: number | undefined;
  ticket: number | undefined;
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
    ticket: tex === undefined ? undefined : ticketOf(tex),
  };
  const problems = Object.values(parts).flatMap((one): readonly Problem[] =>
    one && !one.ok ? one.problems : [],
  );
  const [first, ...more] = problems;
  if (first) return refused(first, ...more);
  const value = (one: Outcome<number> | undefined) => (one?.ok ? one.value : undefined);
  return mapped(found, () => ({
    thread,
    spools: value(parts.spools),
    fills: value(parts.fills),
    hand: value(parts.hand),
    ticket: value(parts.ticket),
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
