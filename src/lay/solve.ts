import { type BestLay, copyOf, keeper, putBack, take } from './best-lay.ts';
import { type Field, fieldOf, placesOf } from './field.ts';
import { firstLay } from './first-lay.ts';
import { exchange, holdIn, shortened } from './moves.ts';
import { inOrderOfSize, jittered } from './order.ts';
import type { Problem } from './problem.ts';
import { bell, seeded } from './random.ts';
import { type Patience, type Snapshot, separatorOf } from './separate.ts';
import type { Lay } from './task.ts';

export interface SolveOptions {
  /** The same seed and the same rounds give the same lay. */
  seed: number;
  /**
   * How many seconds it has run, or whatever stands for them where a lay must be found again the
   * same. Asked once a round.
   */
  elapsed: () => number;
  /** After how many it ends. */
  seconds: number;
  /** A lay of the same task found before, to go on from; it must keep the task's rules. */
  from?: Lay;
  /** Told each better lay as it is found. */
  onBetter: (lay: Lay) => void;
}

/**
 * The search goes by turns, each ending at so many times the seconds of the last: it may be
 * stopped at any moment, and each turn ends with what its own time could give.
 */
const FIRST_TURN = 1;
const TURN_GROWS = 3;
/** The share of a turn in which the strip is shortened boldly; in the rest in small steps. */
const BOLD = 0.75;
const PATIENCE: Patience = { rounds: 80, tries: 3 };
const FINE_PATIENCE: Patience = { rounds: 60, tries: 2 };
/** How much the strip is shortened at a time: at first, and no less than. */
const FIRST_STEP = 0.01;
const LEAST_STEP = 0.001;
/** In small steps: from the first to the last. */
const FINE_STEPS = [0.001, 0.00001] as const;
/** First lays tried, in orders that differ a little. */
const FIRST_LAYS = 4;

/**
 * Looks for ever shorter lays: shortens the strip, which pushes pieces into each other, and takes
 * them apart again; where that fails, exchanges two of the larger ones and tries anew.
 * @returns the best lay, or nothing where a piece fits nowhere
 */
export function solve(problem: Problem, options: SolveOptions): Lay | undefined {
  const places = placesOf(problem);
  const random = seeded(options.seed);
  const best = keeper(problem, places, options.onBetter);
  if (options.from && putBack(problem, places, options.from)) best.keep();
  const bySize = inOrderOfSize(problem);
  for (let i = 0; i < FIRST_LAYS && (i === 0 || options.elapsed() < FIRST_TURN / 2); i++) {
    const order = i === 0 ? bySize : jittered(problem, random);
    if (firstLay(problem, places, order) < Infinity) best.keep();
  }
  if (best.length === Infinity) return undefined;
  if (problem.moving > 0) {
    const field = fieldOf(problem, places);
    const separator = separatorOf(field, random);
    const search = { field, random, best, separator, bySize, step: FIRST_STEP };
    takeTurns(search, options);
  }
  return best.lay();
}

interface Search {
  field: Field;
  random: () => number;
  best: BestLay;
  separator: ReturnType<typeof separatorOf>;
  bySize: readonly number[];
  /** By what share of itself the strip is shortened at a time. */
  step: number;
}

function takeTurns(search: Search, { elapsed, seconds }: SolveOptions): void {
  let from = elapsed();
  for (let turn = FIRST_TURN; from < seconds; turn *= TURN_GROWS) {
    const to = Math.min(seconds, turn);
    if (to <= from) continue;
    const spent = () => (elapsed() - from) / (to - from);
    if (!boldly(search, spent) && !finely(search, spent)) return;
    from = elapsed();
  }
}

/** False where no piece leaves room to shorten the strip as boldly. */
function boldly(search: Search, spent: () => number): boolean {
  const { field, best, separator, random } = search;
  const goesOn = () => spent() < BOLD;
  const pool: Snapshot[] = [];
  let target = best.length * (1 - search.step);
  if (!shortened(field, best, random, target)) return false;
  while (goesOn()) {
    if (separator.separate(target, PATIENCE, goesOn)) {
      best.keep();
      pool.length = 0;
      target = best.length * (1 - search.step);
      if (!shortened(field, best, random, target)) return false;
    } else {
      search.step = Math.max(LEAST_STEP, search.step / 2);
      target = Math.max(target, best.length * (1 - search.step));
      pool.push(copyOf(separator.best));
      pool.sort((one, other) => one.overlap - other.overlap);
      const drawn = Math.floor(Math.abs(bell(random)) * 0.25 * pool.length);
      take(field, pool[Math.min(pool.length - 1, drawn)]!);
      exchange(field, search.bySize, random);
      if (!holdIn(field, target)) return false;
    }
  }
  return finely(search, spent);
}

/** False where no piece leaves room to shorten the strip at all. */
function finely(search: Search, spent: () => number): boolean {
  const { field, best, separator, random } = search;
  const goesOn = () => spent() < 1;
  const [first, last] = FINE_STEPS;
  while (goesOn()) {
    const share = Math.min(1, (1 - spent()) / (1 - BOLD));
    const target = best.length * (1 - last - (first - last) * share);
    if (
      !shortened(field, best, random, target) &&
      !shortened(field, best, random, best.length * (1 - last))
    )
      return false;
    if (separator.separate(target, FINE_PATIENCE, goesOn)) best.keep();
  }
  return true;
}
