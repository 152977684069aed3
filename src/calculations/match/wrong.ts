import { type Bench, tapeStep } from '../../calculation/bench.ts';
import { toGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { MatchUse } from './fields.ts';
import type { Matched } from './read.ts';

/** What is wrong with one length, or with one notch, counted from 1; with all together, 0. */
export interface Wrong {
  kind: 'short' | 'over' | 'differs' | 'seam';
  i: number;
  by: ExactLength;
}

/** Worst first: what can't be sewn, what puckers, what pulls, what only lies elsewhere. */
const WORST = ['short', 'over', 'differs', 'seam'] as const;

/** Edges of which the other one is the longer, and those that are to be alike. */
const EASED: readonly MatchUse[] = ['sleeve', 'cuff', 'waistband'];
const ALIKE: readonly MatchUse[] = ['facing', 'band'];

/** Everything in the way of two edges, as far as the tape in hand shows it; the worst first. */
export function wrongs(found: Matched, bench: Bench): Wrong[] {
  const { asked, plan, takes } = found;
  const seen = (x: number) => toGraduation(exactLength(Math.abs(x)), tapeStep(bench)) > 0;
  const alike = ALIKE.includes(asked.use);
  const fits = alike && !seen(plan.ease) && plan.moves !== undefined;
  const list = plan.lengths.flatMap(({ ease, fullest }, at): Wrong[] => {
    const one = { i: plan.fewer ? 0 : at + 1, by: exactLength(Math.abs(ease)) };
    if (!seen(ease) || fits) return [];
    if (alike) return [{ kind: 'differs', ...one }];
    if (ease < 0 && EASED.includes(asked.use)) return [{ kind: 'short', ...one }];
    // A cuff's sleeve is gathered or pleated onto it.
    const over = fullest > takes * (1 + 1e-9) && asked.use !== 'cuff';
    return over ? [{ kind: 'over', ...one }] : [];
  });
  const seams = (fits ? (plan.moves ?? []) : []).flatMap((by, at): Wrong[] =>
    seen(by) ? [{ kind: 'seam', i: at + 1, by: exactLength(Math.abs(by)) }] : [],
  );
  const rank = ({ kind }: Wrong) => WORST.indexOf(kind);
  return [...list, ...seams].sort((one, more) => rank(one) - rank(more) || more.by - one.by);
}
