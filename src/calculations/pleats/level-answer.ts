import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line, NamedRun } from '../../calculation/calculation.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { hangsOpen, type Pleated } from './pleated.ts';

/** What each pleat is at the other levels. */
export function levelLines({ levels }: Pleated, bench: Bench): Line[] {
  return levels.map((level) => {
    const { depth, width } = level.plan;
    const value = hangsOpen(level)
      ? words.open
      : words.levelOf(byTape(depth, bench), byTape(width, bench));
    return { label: words.labels[level.field], value };
  });
}

/** The lines there, on the same strip: where pleats hang open there are none. */
export function levelRuns({ levels }: Pleated): NamedRun[] {
  return levels
    .filter((level) => !hangsOpen(level))
    .map(({ field, plan }) => ({
      name: words.levelLines[field],
      item: words.line,
      run: plan.run,
    }));
}

/** Bulk where it hangs fuller than at the top lies nearer the top, if anywhere. */
export function levelWarnings({ levels }: Pleated): string[] {
  return levels
    .filter(({ plan }) => plan.overlap)
    .map(({ field }) => words.levelOverlap(words.labels[field]));
}
