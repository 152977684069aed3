import type { Bench } from '../../controls/bench.ts';
import { exactly } from '../../controls/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import type { ClosuresInput } from '../../sewing/closure-input.ts';
import type { ClosurePlan } from '../../sewing/closures.ts';
import { closuresWords as words } from '../../words/closures-words.ts';

type Show = (x: ExactLength) => string;

/** What is to be minded about a row: what gives way around sewn ones, and what hangs over an edge. */
export function doubts(plan: ClosurePlan, input: ClosuresInput, bench: Bench): string[] {
  const show: Show = (x) => exactly(x, bench);
  return [...servedLevel(plan, show), ...givingWay(plan, input, show), ...overhangs(plan, show)];
}

function servedLevel({ level, givesWay }: ClosurePlan, show: Show): string[] {
  if (!level || level.off === 0 || givesWay.includes('level')) return [];
  return [words.offLevel(show(size(level.off)), level.off > 0)];
}

function givingWay(plan: ClosurePlan, input: ClosuresInput, show: Show): string[] {
  const { ends, gap = ZERO, level } = plan;
  const off = level?.off ?? ZERO;
  const said: Record<ClosurePlan['givesWay'][number], () => string> = {
    level: () => words.givesWay.level(show(size(off)), off > 0),
    top: () => words.givesWay.end(true, show(ends.top), show(input.top)),
    bottom: () => words.givesWay.end(false, show(ends.bottom), show(input.bottom)),
    gap: () => words.givesWay.gap(show(gap), show(input.leastGap ?? ZERO)),
  };
  return plan.givesWay.map((what) => said[what]());
}

function overhangs({ overhang }: ClosurePlan, show: Show): string[] {
  return (['top', 'bottom'] as const).flatMap((end) =>
    overhang[end] > 0 ? [words.overhang(end === 'top', show(overhang[end]))] : [],
  );
}

function size(x: ExactLength): ExactLength {
  return exactLength(Math.abs(x));
}
