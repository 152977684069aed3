// Tries mutants for Stryker in its own process: the tests of the arithmetic and the garment are plain
// functions over plain modules without state, so they are bundled and loaded once. A general runner
// loads them anew for each mutant, which takes seconds where this takes milliseconds.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import { INSTRUMENTER_CONSTANTS as NAMES } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  MutantRunStatus,
  TestStatus,
} from '@stryker-mutator/api/test-runner';
import { cpuMs } from './cpu.mjs';
import { loadTests } from './tests-bundled.mjs';
import { FILE, nameOf, passing, Tried } from './tried.mjs';

/** A test may take so much longer with a mutant than without, in time of the processor. */
const LONGER = 10;
const AND_MORE_MS = 5000;

/**
 * A first look at much code: what tests that take no longer (in ms) tell of it, of those that hold
 * with so few cases of each law (`CASES`). What lives then is tried by all of them in the next run.
 */
const LONGEST = Number(process.env.LONGEST ?? Number.POSITIVE_INFINITY);

/** What the instrumented modules look at: which mutant is on, and where hits are counted. */
const mutation = {};
globalThis[NAMES.NAMESPACE] = mutation;

class Bench {
  #folder = resolve('mutants-tests');
  #tests = [];
  #tried = new Tried();
  #told = new Map();
  #watch = watching();

  /**
   * What runs while the tests are loaded, too, needs no new process: the mutant is on only in the
   * tests, and what was loaded before it is what a new process would load.
   */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async dryRun() {
    await this.#load();
    const tests = [];
    for (const test of this.#tests) {
      mutation[NAMES.CURRENT_TEST_ID] = test.id;
      const from = cpuMs();
      const failure = await failureOf(test);
      test.took = cpuMs() - from;
      mutation[NAMES.CURRENT_TEST_ID] = undefined;
      const { id, name, file: fileName, took: timeSpentMs } = test;
      const told = { id, name, fileName, timeSpentMs };
      if (test.took > LONGEST || (failure && process.env.CASES)) continue;
      tests.push(
        failure === undefined
          ? { ...told, status: TestStatus.Success }
          : { ...told, status: TestStatus.Failed, failureMessage: failure },
      );
    }
    writeFileSync(this.#tookFile, JSON.stringify(this.#tests.map(({ took }) => took)));
    const mutantCoverage = mutation[NAMES.MUTATION_COVERAGE_OBJECT];
    return { status: DryRunStatus.Complete, tests, mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    mutation[NAMES.HIT_LIMIT] = hitLimit;
    await this.#load();
    const asked = testFilter && new Set(testFilter);
    const tests = this.#tests.filter(({ id }) => !asked || asked.has(id));
    const mutant = nameOf(activeMutant);
    const known = this.#known(mutant, tests);
    if (known) return known;
    mutation[NAMES.HIT_COUNT] = 0;
    mutation[NAMES.ACTIVE_MUTANT] = activeMutant.id;
    const { note, result } = await this.#firstFailure(mutant, tests, hitLimit);
    mutation[NAMES.ACTIVE_MUTANT] = undefined;
    this.#tried.note({ mutant, ...note });
    return result;
  }

  /** What an earlier run found, when nothing it depends on has changed. */
  #known(mutant, tests) {
    const { survives, falls, by, parts } = this.#tried.of(mutant) ?? {};
    if (survives) return survives === passing(tests) ? survived(tests.length) : undefined;
    if (by === undefined) return undefined;
    const told = this.#tests.find(({ id }) => id === by);
    // With a part of the tests, what fell to another one has fallen.
    const same = told ? told.parts === parts : process.env.BY !== undefined;
    return same ? fallen(falls, by) : undefined;
  }

  async #firstFailure(mutant, tests, hitLimit) {
    const before = this.#tried.of(mutant)?.by;
    const told = this.#toldOf(mutant);
    const rank = ({ id, took }) => (id === before ? -1 : took / (1 + (told.get(id) ?? 0)));
    for (const test of tests.sort((a, b) => rank(a) - rank(b))) {
      const by = { by: test.id, parts: test.parts };
      const found = { mutant, falls: 'without end', ...by };
      this.#watch.postMessage({ found, until: cpuMs() + AND_MORE_MS + LONGER * test.took });
      const failure = await failureOf(test);
      this.#watch.postMessage(undefined);
      const endless = determineHitLimitReached(mutation[NAMES.HIT_COUNT], hitLimit) !== undefined;
      if (!endless && failure === undefined) continue;
      const falls = endless ? 'without end' : failure.slice(0, 200);
      told.set(test.id, (told.get(test.id) ?? 0) + 1);
      return { note: { falls, ...by }, result: fallen(falls, test.id) };
    }
    return { note: { survives: passing(tests) }, result: survived(tests.length) };
  }

  /** How many mutants of the same file each test has told: it is asked the sooner of the next. */
  #toldOf(mutant) {
    const file = mutant.slice(0, mutant.indexOf(':'));
    if (!this.#told.has(file)) this.#told.set(file, new Map());
    return this.#told.get(file);
  }

  get #tookFile() {
    return resolve(this.#folder, 'took.json');
  }

  async #load() {
    if (this.#tests.length > 0) return;
    this.#tests = await loadTests(this.#folder);
    const took = existsSync(this.#tookFile) ? JSON.parse(readFileSync(this.#tookFile, 'utf8')) : [];
    this.#tests.forEach((test, i) => {
      test.took = took[i] ?? 0;
    });
  }
}

const survived = (nrOfTests) => ({ status: MutantRunStatus.Survived, nrOfTests });

const fallen = (falls, by) =>
  falls === 'without end'
    ? { status: MutantRunStatus.Timeout, reason: `${falls}: ${by}` }
    : { status: MutantRunStatus.Killed, killedBy: [by], failureMessage: falls, nrOfTests: 1 };

function watching() {
  const watch = new Worker(new URL('./watch.mjs', import.meta.url), { workerData: FILE });
  watch.unref();
  return watch;
}

/** Why a test fails, or undefined when it doesn’t. */
async function failureOf({ run }) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'bench', Bench)];
