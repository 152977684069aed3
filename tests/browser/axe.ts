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
  const faults: string[] = [];
  for (const { id, help, nodes } of violations) {
    for (const { target, failureSummary } of nodes) {
      if (id === 'target-size' && (await page.evaluate(isScrolledAway, String(target)))) continue;
      faults.push(`${id}: ${help} (${target}) ${failureSummary ?? ''}`);
    }
  }
  return faults;
}

/**
 * Whether a target's middle is outside of what it scrolls in: it can't be pressed before it is
 * scrolled to, and what lies over that place now doesn't obscure it. Runs in the page.
 */
function isScrolledAway(target: string): boolean {
  const element = document.querySelector(target);
  if (!element) return false;
  const { top, bottom } = element.getBoundingClientRect();
  const middle = (top + bottom) / 2;
  for (let around = element.parentElement; around; around = around.parentElement) {
    if (!/auto|scroll/.test(getComputedStyle(around).overflowY)) continue;
    const pane = around.getBoundingClientRect();
    if (middle < pane.top || middle > pane.bottom) return true;
  }
  return false;
}
