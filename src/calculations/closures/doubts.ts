import { closuresWords as words } from '#words/calculations/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import type { ClosuresInput } from '../../sewing/closures/closure-input.ts';
import type { ClosurePlan } from '../../sewing/closures/closures.ts';

type Show = (x: ExactLength) => string;

/** What is to be minded about a row: what gives way around sewn ones, and what hangs over an edge. */
export function doubts(plan: ClosurePlan, input: ClosuresInput, bench: Bench): string[] {
  const show: Show = (x) => byTape(x, bench);
  return [...offLevel(plan, show), ...givingWay(plan, input, show), ...overhangs(plan, show)];
}

/** How far from the level its mark is: a sewn one that serves it, or the nearest where it gives way. */
function offLevel({ level, givesWay }: ClosurePlan, show: Show): string[] {
  if (!level || level.off === 0) return [];
  const off = exactLength(Math.abs(level.off));
  return [words.offLevel(!givesWay.includes('level'), show(off), level.off > 0)];
}

function givingWay({ ends, gap, givesWay }: ClosurePlan, input: ClosuresInput, show: Show) {
  return givesWay.flatMap((what) => {
    if (what === 'level') return [];
    if (what === 'gap') return words.givesWay.gap(show(gap ?? ZERO), show(input.leastGap ?? ZERO));
    return words.givesWay.end(what === 'top', show(ends[what]), show(input[what]));
  });
}

function overhangs({ overhang }: ClosurePlan, show: Show): string[] {
  return (['top', 'bottom'] as const).flatMap((end) =>
    overhang[end] > 0 ? [words.overhang(end === 'top', show(overhang[end]))] : [],
  );
}
