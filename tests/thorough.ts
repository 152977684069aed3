import { test } from 'vitest';

/**
 * `npm run thorough` tries the whole of what the gate only samples: every size of every screen,
 * every scene, every step of a long way. The gate sees the same things, each once.
 */
export const THOROUGH = process.env.THOROUGH !== undefined;

/** All of them, or in the gate those that are chosen for it. */
export function inGate<One>(all: readonly One[], chosen: (one: One, i: number) => boolean): One[] {
  return THOROUGH ? [...all] : all.filter(chosen);
}

/**
 * How often a law that takes its time is tried, as one over every calculation (there are dozens,
 * and each has laws of its own beside): in the gate a third of the times.
 */
export function timesTried(whole: number): number {
  return THOROUGH ? whole : Math.ceil(whole / 3);
}

/** A test of `npm run thorough` alone: the gate has one of the same kind. */
export const thoroughly: (name: string, run: () => unknown) => void = THOROUGH
  ? test
  : () => undefined;
