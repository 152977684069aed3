import type { Bench } from '../../calculation/bench.ts';
import { METRIC_GRADUATIONS } from '../../lengths/graduation.ts';
import { BENCH_UNITS } from '../../lengths/unit.ts';
import type { Store } from '../../storage/store.ts';

type Choices = { readonly [Key in keyof Bench]: readonly Bench[Key][] };

/** What each setting may be; the first is what a new bench has. */
export const CHOICES: Choices = {
  hand: ['right', 'left'],
  unit: BENCH_UNITS,
  metric: METRIC_GRADUATIONS,
  inch: ['1/16in', '1/8in', '1/32in'],
  theme: ['phone', 'paper', 'night'],
  voice: ['off', 'on'],
  decimalMark: ['.', ','],
  keys: ['pad', 'phone'],
};

/** Under what the bench is kept. */
export const SETTINGS = 'settings';

/** A bench out of whatever was kept: a setting that is missing or unknown is as new. */
export function checkBench(kept: unknown): Bench {
  const known: Record<string, unknown> = Object(kept);
  const pairs = Object.entries(CHOICES).map(([key, choices]: [string, readonly string[]]) => [
    key,
    choices.find((choice) => choice === known[key]) ?? choices[0],
  ]);
  return Object.fromEntries(pairs);
}

/** The kept settings. Rejects when storage does not answer. */
export async function loadBench(store: Store): Promise<Bench> {
  return checkBench(await store.load(SETTINGS));
}
