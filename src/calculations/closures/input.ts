import { needed } from '../../calculation/needed.ts';
import { ZERO } from '../../lengths/length.ts';
import type { ClosuresInput, SpacingRule } from '../../sewing/closure-input.ts';
import type { ClosuresAsked } from './fields.ts';

/** The row that is asked for. */
export function closuresInput(asked: ClosuresAsked): ClosuresInput {
  const { opening, ends, level, levelBy, sewn, leastGap, top, bottom } = asked;
  const atEnds = ends === 'given' ? needed({ top, bottom }) : { top: ZERO, bottom: ZERO };
  const rule = ruleOf(asked);
  const width = rule.by === 'gap' ? undefined : asked.width;
  return { opening, ends, ...atEnds, rule, level, levelBy, sewn, width, leastGap };
}

function ruleOf({ by, count, gap, pitch, width }: ClosuresAsked): SpacingRule {
  if (by === 'count') return { by, ...needed({ count }) };
  return by === 'gap' ? { by, ...needed({ gap, width }) } : { by, ...needed({ pitch }) };
}
