import { ZERO } from '../../lengths/length.ts';
import { type Strips, stripsFor } from '../../sewing/cloth/strips.ts';
import type { PleatsInput } from '../../sewing/fullness/pleat-input.ts';
import { type Level, type LevelPleats, pleatsAtLevel } from '../../sewing/fullness/pleat-levels.ts';
import { type Pleats, pleats } from '../../sewing/fullness/pleats.ts';
import { answerUnless, mapped, type Outcome, type Problem } from '../../sewing/problem.ts';
import { LEVELS, type LevelField, type PleatsAsked, pleatsInput } from './fields.ts';

/** Another level that is given, and the pleats there. */
export interface FittedLevel extends Level {
  field: LevelField;
  plan: LevelPleats;
}

/** Pleats as they were worked out, with what was asked. */
export interface Pleated {
  asked: PleatsAsked;
  input: PleatsInput;
  plan: Pleats;
  /** From above. */
  levels: readonly FittedLevel[];
  /** Undefined where the cloth isn't known. */
  strips: Strips | undefined;
}

/** The pleats as they are asked for, and as they come out. */
export type Planned = Pick<Pleated, 'input' | 'plan'>;

/** @param begun so many of them instead, where they are begun */
export function plannedPleats(
  fields: Parameters<typeof pleatsInput>[0],
  begun?: number,
): Outcome<Planned> {
  const input = pleatsInput(fields, begun);
  return input.ok ? mapped(pleats(input.value), (plan) => ({ input: input.value, plan })) : input;
}

/** All that is asked of pleats, or every reason why not. */
export function pleated(asked: PleatsAsked): Outcome<Pleated> {
  const found = plannedPleats(asked);
  if (!found.ok) return found;
  const { input, plan } = found.value;
  const problems: Problem[] = [];
  const levels = LEVELS.flatMap((field): FittedLevel[] => {
    const across = asked[field];
    if (across === undefined) return [];
    const there = pleatsAtLevel(input, plan, { field, across });
    if (there.ok) return [{ field, across, plan: there.value }];
    problems.push(...there.problems);
    return [];
  });
  const { cloth, seam, deep } = asked;
  const strips =
    cloth === undefined ? undefined : stripsFor({ needed: plan.strip, cloth, seam, deep });
  if (strips && !strips.ok) problems.push(...strips.problems);
  return answerUnless(problems, () => ({
    ok: true,
    value: { asked, input, plan, levels, strips: strips?.ok ? strips.value : undefined },
  }));
}

/** Whether the pleats hang open there: nothing is folded. */
export function hangsOpen({ plan }: FittedLevel): boolean {
  return plan.depth === ZERO;
}
