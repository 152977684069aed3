import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const RULES: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  resultTypes: ['violations'],
};

/** What axe-core finds wrong with the page as it is now, one line a fault; none is the aim. */
export async function axeFaults(page: Page): Promise<string[]> {
  // Evaluated by the debugger rather than added as a script, which the content policy forbids.
  await page.evaluate(source);
  const { violations } = await page.evaluate(
    (rules) =>
      (globalThis as unknown as { axe: { run(r: RunOptions): Promise<AxeResults> } }).axe.run(
        rules,
      ),
    RULES,
  );
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${help} (${target}) ${failureSummary ?? ''}`),
  );
}
