import { readHome } from '../record/home.ts';
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
      /** The number after it: of the next mark, or of the next step of the same work. */
      after: number | undefined;
    }
  /** Nothing goes on there before the maker has said how. */
  | { kind: 'decide'; home: string }
  /** What the next step lacks. */
  | { kind: 'missing'; step: GarmentStep; trouble: Trouble }
  | { kind: 'all made' }
  | { kind: 'nothing yet' };

/**
 * The next thing for the hand: the step in hand as long as it isn't made; then the first after it,
 * round to the first of all, that can be made or waits for a decision; then what is missing.
 *
 * @param inHand the home of the step the maker was at last
 */
export function nextOf(answer: Answer, inHand?: string): Next {
  const { steps, conflicts } = answer;
  const at = steps.findIndex(({ home }) => home === inHand);
  const from = at < 0 ? [...steps] : [...steps.slice(at), ...steps.slice(0, at)];
  const open = from.filter((step) => !isMade(step));
  const [first] = open;
  if (first && first.home === inHand) return shown(answer, first);
  const can = open.map((step) => shown(answer, step)).find(({ kind }) => kind !== 'missing');
  if (can) return can;
  if (first) return shown(answer, first);
  const [conflict] = conflicts;
  if (conflict) return { kind: 'decide', home: conflict.home };
  return { kind: steps.length > 0 ? 'all made' : 'nothing yet' };
}

/** The step after the one that is shown, for what is passed over; undefined where there is no other to be made. */
export function afterNext({ steps }: Answer, home: string): string | undefined {
  const at = steps.findIndex((step) => step.home === home);
  const others = [...steps.slice(at + 1), ...steps.slice(0, Math.max(0, at))];
  return others.find((step) => !isMade(step))?.home;
}

/** Whether all there is to it is made. */
export function isMade({ made, of }: GarmentStep): boolean {
  return of !== undefined && made >= of;
}

function shown(answer: Answer, step: GarmentStep): Next {
  const result = answer.values.get(step.home);
  if (!result) return { kind: 'missing', step, trouble: { kind: 'undecided' } };
  if (!result.ok) return { kind: 'missing', step, trouble: result.trouble };
  if (!step.ready) return undecided(answer, step);
  const { value } = result;
  if (typeof value === 'number') {
    return { kind: 'step', step, value, after: afterIn(answer, step) };
  }
  const rank = nextRank(result, value.marks.length);
  const mark = { rank, before: value.marks[rank - 1]?.at };
  const at = value.marks[rank]?.at ?? 0;
  return { kind: 'step', step, value: at, mark, after: value.marks[rank + 1]?.at };
}

/** The first mark still to come; where nothing is made, the first of all. */
function nextRank({ made = [] }: { made?: readonly (string | undefined)[] }, count: number) {
  for (let rank = 0; rank < count; rank++) if (made[rank] === undefined) return rank;
  return Math.max(0, count - 1);
}

/** The number of the next step of the same work and side that is a single one. */
function afterIn({ steps, values }: Answer, { home }: GarmentStep): number | undefined {
  const { id, side } = readHome(home);
  const own = steps.filter((step) => {
    const other = readHome(step.home);
    return other.id === id && other.side === side && !isMade(step);
  });
  const next = own[own.findIndex((step) => step.home === home) + 1];
  const result: Result | undefined = next && values.get(next.home);
  return result?.ok && typeof result.value === 'number' ? result.value : undefined;
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
