// Tries mutants for Stryker in its own process: the tests of the arithmetic and the garment are plain
// functions over plain modules without state, so they are bundled and loaded once. A general runner
// loads them anew for each mutant, which takes seconds where this takes milliseconds.
import { mkdtempSync, readdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS as NAMES } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  MutantRunStatus,
  TestStatus,
} from '@stryker-mutator/api/test-runner';
import { build } from 'vite';

const FOLDERS = ['lengths', 'sewing', 'garment'];
const HERE = 'tests/mutants/vitest.mjs';

/** What the instrumented modules look at: which mutant is on, and where hits are counted. */
const mutation = {};
globalThis[NAMES.NAMESPACE] = mutation;

class Bench {
  #tests = [];
  /** Milliseconds each test took unchanged: the quickest are tried first. */
  #took = new Map();

  capabilities() {
    return { reloadEnvironment: false };
  }

  async dryRun() {
    await this.#load();
    const tests = [];
    for (const test of this.#tests) {
      mutation[NAMES.CURRENT_TEST_ID] = test.id;
      const from = performance.now();
      const failure = await failureOf(test);
      const timeSpentMs = performance.now() - from;
      mutation[NAMES.CURRENT_TEST_ID] = undefined;
      this.#took.set(test.id, timeSpentMs);
      const { id, name, file: fileName } = test;
      const told = { id, name, fileName, timeSpentMs };
      tests.push(
        failure === undefined
          ? { ...told, status: TestStatus.Success }
          : { ...told, status: TestStatus.Failed, failureMessage: failure },
      );
    }
    const mutantCoverage = mutation[NAMES.MUTATION_COVERAGE_OBJECT];
    return { status: DryRunStatus.Complete, tests, mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    mutation[NAMES.HIT_LIMIT] = hitLimit;
    if (mutantActivation === 'static') mutation[NAMES.ACTIVE_MUTANT] = activeMutant.id;
    await this.#load();
    mutation[NAMES.HIT_COUNT] = 0;
    mutation[NAMES.ACTIVE_MUTANT] = activeMutant.id;
    const result = await this.#firstFailure(testFilter && new Set(testFilter), hitLimit);
    mutation[NAMES.ACTIVE_MUTANT] = undefined;
    return result;
  }

  async #firstFailure(asked, hitLimit) {
    let nrOfTests = 0;
    for (const test of this.#quickFirst()) {
      if (asked && !asked.has(test.id)) continue;
      nrOfTests++;
      const failureMessage = await failureOf(test);
      const endless = determineHitLimitReached(mutation[NAMES.HIT_COUNT], hitLimit);
      if (endless) return endless;
      if (failureMessage !== undefined) {
        return { status: MutantRunStatus.Killed, killedBy: [test.id], failureMessage, nrOfTests };
      }
    }
    return { status: MutantRunStatus.Survived, nrOfTests };
  }

  #quickFirst() {
    const took = ({ id }) => this.#took.get(id) ?? 0;
    return [...this.#tests].sort((a, b) => took(a) - took(b));
  }

  async #load() {
    if (this.#tests.length > 0) return;
    process.env.MUTANTS = '1';
    const folder = await bundled();
    const { testsOf } = await import(inFolder(folder, basename(HERE, '.mjs')));
    for (const [name, file] of Object.entries(testFiles())) {
      this.#tests.push(...(await testsOf(file, () => import(inFolder(folder, name)))));
    }
  }
}

const inFolder = (folder, name) => pathToFileURL(join(folder, `${name}.mjs`)).href;

/** Every test file by the name of its bundle. */
function testFiles() {
  return Object.fromEntries(
    FOLDERS.flatMap((folder) =>
      readdirSync(join('tests', folder))
        .filter((file) => file.endsWith('.test.ts'))
        .map((file) => [`${folder}-${basename(file, '.test.ts')}`, resolve('tests', folder, file)]),
    ),
  );
}

async function bundled() {
  const outDir = mkdtempSync(resolve('mutants-'));
  const here = resolve(HERE);
  await build({
    configFile: false,
    logLevel: 'error',
    resolve: {
      alias: [
        { find: /^vitest$/, replacement: here },
        { find: /^fast-check$/, replacement: resolve('tests/laws/fast-check.ts') },
      ],
    },
    build: {
      ssr: true,
      outDir,
      minify: false,
      rolldownOptions: {
        input: { [basename(HERE, '.mjs')]: here, ...testFiles() },
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  return outDir;
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
