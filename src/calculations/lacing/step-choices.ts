import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import { exactLength, UNITS_PER_MM } from '../../lengths/length.ts';
import { type LacingKind, strandsOf } from '../../sewing/lacing/lacing-kinds.ts';
import type { Repeat } from '../../sewing/lacing/lacing-repeat.ts';
import { MOST_STEPS, readSteps } from '../../sewing/lacing/lacing-steps.ts';

const ALL = 'all';
/** Before a step's number: keys of digits alone would be sorted in front of all others. */
const STEP = 'step-';

/**
 * Up to which step a lacing may be drawn.
 *
 * @param kind undefined of none that is known
 * @param own the maker's own steps as typed
 */
export function stepChoices(kind: LacingKind | undefined, own: string): Record<string, string> {
  return stepsUpTo(kind ? (repeatOf(kind, own)?.points.length ?? 0) : 0);
}

/** Whether some lacing may be drawn up to it. */
export function isStep(value: string): boolean {
  return Object.hasOwn(stepsUpTo(MOST_STEPS), value);
}

/**
 * How many steps on from the first are drawn: undefined for all there are, or those of one repeat.
 *
 * @param step what is chosen
 * @param before the first one typed is before the hole is passed, so not drawn
 */
export function stepsDrawn(step: string, before: boolean): number | undefined {
  return step === ALL ? undefined : Number(step.slice(STEP.length)) - (before ? 2 : 1);
}

function stepsUpTo(steps: number): Record<string, string> {
  const each = Array.from({ length: steps }, (_, i) => [`${STEP}${i + 2}`, String(i + 2)]);
  return { [ALL]: words.all, ...Object.fromEntries(each) };
}

/** Of any size: only its steps are counted. */
function repeatOf(kind: LacingKind, own: string): Repeat | undefined {
  const one = exactLength(UNITS_PER_MM);
  if (kind !== 'own') return strandsOf(kind, { margin: one, outside: one })[0]?.repeat;
  const read = readSteps(own, one);
  return read.ok ? read.repeat : undefined;
}
