import { appendFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect } from 'vitest';

/**
 * What every test gets when it asks for `fast-check` (vite.config.ts): the library with a seed
 * that stays the same, so that the gate never fails by chance. `npm run laws` sets LAWS, and each
 * law is then tried with a fresh seed and many more cases, whatever its test asks for.
 */
const fc: typeof import('fast-check') = createRequire(import.meta.url)('fast-check');

/** Any number would do; it only must not change from run to run. */
const GATE_SEED = 20_261_129;

/** How `npm run laws` wants it: `seed`, `cases`, `minutes` for one law at most, `report` file. */
export interface LawsRun {
  seed: number;
  cases: number;
  minutes?: number;
  report: string;
}

/** What one law came to. */
export interface LawTried {
  law: string;
  cases: number;
  seconds: number;
  /** Stopped by the time limit before it had all its cases. */
  short: boolean;
}

const laws = process.env.LAWS ? (JSON.parse(process.env.LAWS) as LawsRun) : undefined;

// A mutant (`npm run mutants`) falls to the first case that fails: nobody asks for the smallest.
fc.configureGlobal({ seed: GATE_SEED, endOnFailure: process.env.MUTANTS !== undefined });

type Property = Parameters<typeof fc.assert>[0];
type Given = Parameters<typeof fc.assert>[1];
type Details = Awaited<ReturnType<typeof fc.check>>;

function assertMany(property: Property, given: Given = {}, run: LawsRun) {
  const { seed: _, path: __, ...asked } = given;
  const { seed, cases, minutes } = run;
  const limit = minutes === undefined ? {} : { interruptAfterTimeLimit: minutes * 60_000 };
  const numRuns = Math.max(cases, asked.numRuns ?? 0);
  const from = performance.now();
  const tried = fc.check(property, { ...asked, ...limit, seed, numRuns });
  const law = expect.getState().currentTestName ?? 'a law without a test';
  return tried instanceof Promise
    ? tried.then((details) => told(details, law, from, run))
    : told(tried, law, from, run);
}

function told(details: Details, law: string, from: number, { report, cases }: LawsRun) {
  if (details.failed && !details.interrupted) {
    // Its message names seed and path: what replays it.
    throw new Error(fc.defaultReportMessage(details));
  }
  const seconds = (performance.now() - from) / 1000;
  const line: LawTried = { law, cases: details.numRuns, seconds, short: details.numRuns < cases };
  appendFileSync(report, `${JSON.stringify(line)}\n`);
}

const forLaws = laws && {
  ...fc,
  assert: (property: Property, given?: Given) => assertMany(property, given, laws),
};

export default forLaws ?? fc;
