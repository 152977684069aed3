/** @typedef {import('vitest/node').Reporter} Reporter */

/**
 * Says how the run ended, as the very last line: `N passed, N failed`.
 *
 * A file that can't be read, a suite whose set-up broke, an error nobody caught
 * and a run without a single test all count as failed.
 *
 * @implements {Reporter}
 */
export default class ClosingLine {
  #passed = 0;
  #skipped = 0;
  /** Until the run has ended, it has failed. */
  #failed = 1;

  constructor() {
    process.on('exit', (code) => {
      // Taking things down can fail after the last test.
      if (code !== 0 && this.#failed === 0) this.#failed = 1;
      if (code === 0 && this.#failed > 0) process.exitCode = 1;
      const skipped = this.#skipped > 0 ? `, ${this.#skipped} skipped` : '';
      process.stdout.write(`${this.#passed} passed, ${this.#failed} failed${skipped}\n`);
    });
  }

  /**
   * @param {ReadonlyArray<import('vitest/node').TestModule>} files
   * @param {ReadonlyArray<import('vitest').SerializedError>} uncaught
   */
  onTestRunEnd(files, uncaught) {
    this.#passed = 0;
    this.#skipped = 0;
    this.#failed = uncaught.length;
    for (const file of files) {
      this.#failed += file.errors().length;
      for (const suite of file.children.allSuites()) this.#failed += suite.errors().length;
      for (const test of file.children.allTests()) this.#count(test.result().state);
    }
    if (this.#passed + this.#failed + this.#skipped === 0) this.#failed = 1;
  }

  /**
   * A test that never got to run ('pending') has not passed.
   *
   * @param {'passed' | 'failed' | 'skipped' | 'pending'} state
   */
  #count(state) {
    if (state === 'passed') this.#passed += 1;
    else if (state === 'skipped') this.#skipped += 1;
    else this.#failed += 1;
  }
}
