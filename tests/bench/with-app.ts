import { rm } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { buildApp, serveApp } from '../browser/built.ts';
import { launchBrowser } from '../browser/harness.ts';

/**
 * Builds and serves the app, lets `work` use it in a browser, and takes everything down.
 * @param flags what else the browser is started with
 */
export async function withApp(
  work: (browser: Browser, address: string) => Promise<void>,
  flags: readonly string[] = [],
) {
  const built = await buildApp();
  const served = await serveApp(built);
  const browser = await launchBrowser(flags);
  try {
    await work(browser, served.address);
  } finally {
    await browser.close();
    await served.close();
    await rm(built, { recursive: true });
  }
}
