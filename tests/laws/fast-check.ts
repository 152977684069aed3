import { createRequire } from 'node:module';
import { relative } from 'node:path';
import { expect } from 'vitest';
import { addLine } from '../line-file.mjs';
import { type LawsRun, type LawTried, readTried } from './tried.ts';

/**
 * What every test gets when it asks for `fast-check` (vite.config.ts): the library with a seed
 * that stays the same, so that the gate never fails by chance. `npm run laws` sets LAWS, and each
 * law is then tried with a fresh seed and many more cases, whatever its test asks for.
 */
const fc: typeof import('fast-check') = createRequire(import.meta.url)('fast-check');

/** Any number would do; it only must not change from run to run. */
const GATE_SEED = 20_261_129;

const laws = process.env.LAWS ? (JSON.parse(process.env.LAWS) as LawsRun) : undefined;

// A mutant (`npm run mutants`) falls to the first case that fails: nobody asks for the smallest.
const forMutants = process.env.MUTANTS !== undefined;
fc.configureGlobal({ seed: GATE_SEED, endOnFailure: forMutants });

/** So many cases of a law are tried with each of thousands of mutants; what more would find is not counted. */
const MOST_FOR_A_MUTANT = Number(process.env.CASES ?? 100);

type Property = Parameters<typeof fc.assert>[0];
type Given = Parameters<typeof fc.assert>[1];
type Details = Awaited<ReturnType<typeof fc.check>>;

/** How many laws the test that is running has tried: it may hold several. */
const triedIn = new Map<string, number>();

function lawHere(): string {
  const { currentTestName = 'a law without a test', testPath = '' } = expect.getState();
  const name = `${relative(process.cwd(), testPath)} > ${currentTestName}`;
  const before = triedIn.get(name) ?? 0;
  triedIn.set(name, before + 1);
  return before === 0 ? name : `${name} (${before + 1})`;
}

function assertMany(property: Property, given: Given = {}, run: LawsRun) {
  const { seed: _, path: __, ...asked } = given;
  const { seed, cases, minutes } = run;
  const law = lawHere();
  if (readTried(run.report).some((one) => one.law === law && !one.short)) return;
  const limit = minutes === undefined ? {} : { interruptAfterTimeLimit: minutes * 60_000 };
  const numRuns = Math.max(cases, asked.numRuns ?? 0);
  const from = performance.now();
  const tried = fc.check(property, { ...asked, ...limit, seed, numRuns });
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
  addLine(report, line);
}

function assertFew(property: Property, given: Given = {}) {
  const numRuns = Math.min(given.numRuns ?? MOST_FOR_A_MUTANT, MOST_FOR_A_MUTANT);
  return fc.assert(property, { ...given, numRuns });
}

const assertLaws =
  laws && ((property: Property, given?: Given) => assertMany(property, given, laws));
const assert = assertLaws ?? (forMutants ? assertFew : fc.assert);

export default { ...fc, assert } as typeof fc;
