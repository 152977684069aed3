import { rm } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { buildApp, serveApp } from '../browser/built.ts';
import { launchBrowser } from '../browser/harness.ts';

/**
 * Builds and serves the app, lets `work` use it in a browser, and takes everything down.
 * `BUILT=folder` serves what was built there before.
 * @param flags what else the browser is started with
 */
export async function withApp(
  work: (browser: Browser, address: string) => Promise<void>,
  flags: readonly string[] = [],
) {
  const { BUILT } = process.env;
  const built = BUILT ?? (await buildApp());
  const served = await serveApp(built);
  const browser = await launchBrowser(flags);
  try {
    await work(browser, served.address);
  } finally {
    await browser.close();
    await served.close();
    if (!BUILT) await rm(built, { recursive: true });
  }
}
