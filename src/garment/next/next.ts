import { isHomeOf, readHome } from '../record/home.ts';
import type { Result, Trouble } from '../work-out/result.ts';
import type { GarmentStep } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';

/** What the key shows: one of these there always is. */
export type Next =
  /** A step whose number is there: it can be made. */
  | {
      kind: 'step';
      step: GarmentStep;
      /** A length in 1/8000 mm, or a count. */
      value: number;
      /** Of a row: which mark is next, and where the one before stands. */
      mark?: { rank: number; before: number | undefined };
      /** The number after it, and whose: of the next mark, or of the step that comes next, of the same work. */
      after: { home: string; value: number } | undefined;
    }
  /** Nothing goes on there before the maker has said how. */
  | { kind: 'decide'; home: string }
  /** What the next step lacks. */
  | { kind: 'missing'; step: GarmentStep; trouble: Trouble }
  | { kind: 'all made' }
  | { kind: 'nothing yet' };

/**
 * The next thing for the hand: the step in hand as long as it isn't made; then the first after it,
 * round to the first of all, that can be made or waits for a decision; then what is missing. What was
 * passed over comes when there is nothing else.
 *
 * @param inHand the home of the step the maker was at last
 */
export function nextOf(answer: Answer, inHand?: string): Next {
  const { steps, conflicts } = answer;
  const at = steps.findIndex(({ home }) => home === inHand);
  // Round to the first of all: what comes twice has come once.
  const from = [...steps.slice(Math.max(0, at)), ...steps];
  const open = from.filter((step) => !isMade(step));
  const wanted = open.filter(({ passed }) => !passed);
  const [first] = wanted;
  if (first && first.home === inHand) return shown(answer, first);
  const next = canIn(answer, wanted) ?? first ?? canIn(answer, open) ?? open[0];
  if (next) return shown(answer, next);
  const [conflict] = conflicts;
  if (conflict) return { kind: 'decide', home: conflict.home };
  return { kind: steps.length > 0 ? 'all made' : 'nothing yet' };
}

/** The first of some steps that can be made, or waits for a decision. */
function canIn(answer: Answer, steps: readonly GarmentStep[]): GarmentStep | undefined {
  return steps.find((step) => shown(answer, step).kind !== 'missing');
}

/**
 * The step after the one that is shown, for when that is passed over; undefined where there is no
 * other to be made that isn't passed over itself.
 */
export function afterNext({ steps }: Answer, home: string): string | undefined {
  const at = steps.findIndex((step) => step.home === home);
  const others = [...steps.slice(at + 1), ...steps.slice(0, Math.max(0, at))];
  return others.find((step) => !isMade(step) && !step.passed)?.home;
}

/**
 * The same step on other sides that can be made with the same press: to come as this one is, of
 * the same number on the tape, and of a row the same mark.
 *
 * @param shownOf what a key would show of a number
 */
export function besides(
  answer: Answer,
  next: Extract<Next, { kind: 'step' }>,
  shownOf: (value: number) => number,
): GarmentStep[] {
  const { id, key } = readHome(next.step.home);
  return answer.steps.filter((step) => {
    if (!isHomeOf(step.home, id) || step.home === next.step.home) return false;
    if (readHome(step.home).key !== key || isMade(step) || !step.ready) return false;
    const its = shown(answer, step);
    const sameMark = its.kind === 'step' && its.mark?.rank === next.mark?.rank;
    return sameMark && shownOf(its.value) === shownOf(next.value);
  });
}

/** The next step that can't be undone, after the one that is shown; undefined where none is to come. */
export function nextCut(answer: Answer, next: Next): GarmentStep | undefined {
  const { steps } = answer;
  const home = next.kind === 'decide' ? next.home : 'step' in next ? next.step.home : '';
  const at = steps.findIndex((step) => step.home === home);
  const order = [...steps.slice(at + 1), ...steps];
  const isCut = ({ step, passed }: GarmentStep) => !step.undoable && !passed;
  return order.find((step) => isCut(step) && !isMade(step));
}

/** Whether all there is to it is made. */
export function isMade({ made, of }: GarmentStep): boolean {
  return made >= (of ?? Number.POSITIVE_INFINITY);
}

function shown(answer: Answer, step: GarmentStep): Next {
  // A step is of a number that was worked out.
  const result = answer.values.get(step.home) as Result;
  if (!result.ok) return { kind: 'missing', step, trouble: result.trouble };
  if (!step.ready) return undecided(answer, step);
  const { value } = result;
  if (typeof value === 'number') {
    return { kind: 'step', step, value, after: afterIn(answer, step) };
  }
  // The first mark still to come; where nothing is made, the first of all.
  const rank = Math.max(0, (result.made ?? []).indexOf(undefined));
  const mark = { rank, before: value.marks[rank - 1]?.at };
  const at = value.marks[rank]?.at ?? 0;
  const further = value.marks[rank + 1]?.at;
  const after = further === undefined ? undefined : { home: step.home, value: further };
  return { kind: 'step', step, value: at, mark, after };
}

/** The number of the step that comes next, where it is of the same work and side and a single one. */
function afterIn(answer: Answer, { home }: GarmentStep): Extract<Next, { kind: 'step' }>['after'] {
  const { id, side } = readHome(home);
  const next = afterNext(answer, home);
  if (next === undefined || !isHomeOf(next, id) || readHome(next).side !== side) return undefined;
  const result = answer.values.get(next) as Result;
  return result.ok && typeof result.value === 'number'
    ? { home: next, value: result.value }
    : undefined;
}

/** Where the decision is open that a step waits for: its own, or the nearest behind it. */
function undecided(answer: Answer, step: GarmentStep): Next {
  const open = new Set(answer.conflicts.map(({ home }) => home));
  const met = new Set([step.home]);
  for (const key of met) {
    if (open.has(key)) return { kind: 'decide', home: key };
    for (const source of answer.sources(key)) met.add(source);
  }
  return { kind: 'missing', step, trouble: { kind: 'undecided' } };
}
