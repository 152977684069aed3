import { type ChildProcess, spawn } from 'node:child_process';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { findChromium } from '../../.ci/chromium.mjs';
import { FLAGS } from '../browser/harness.ts';

/** On a machine that has other things to do a start takes long, and nothing is wrong with it. */
const PATIENCE_MS = 180_000;

export interface KilledBrowser {
  page: Page;
  /** Kills it, and all of it, without a warning. */
  end(): Promise<void>;
}

/**
 * A browser of its own on a device's folder, with a blank page: on its own first page, which loads
 * while it is spoken to, it sometimes doesn't answer.
 * @throws Error when it doesn't start; then nothing of it is left
 */
export async function startOn(device: string): Promise<KilledBrowser> {
  const path = findChromium();
  if (!path) throw new Error('no Chromium: `node .ci/setup.mjs --browser` finds one');
  await rm(join(device, 'DevToolsActivePort'), { force: true });
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${device}`];
  const started = spawn(path, [...FLAGS, ...own, 'about:blank'], {
    stdio: 'ignore',
    detached: true,
  });
  const end = () => killed(started);
  try {
    return { page: await pageOf(device), end };
  } catch (error) {
    await end();
    throw error;
  }
}

async function pageOf(device: string): Promise<Page> {
  const address = `http://127.0.0.1:${await portOf(device)}`;
  const browser = await chromium.connectOverCDP(address, { timeout: PATIENCE_MS });
  const [context] = browser.contexts();
  if (!context) throw new Error('the browser has no context');
  context.setDefaultTimeout(PATIENCE_MS);
  return context.pages()[0] ?? context.newPage();
}

async function portOf(device: string): Promise<string> {
  for (const late = Date.now() + PATIENCE_MS; Date.now() < late; ) {
    const text = await readFile(join(device, 'DevToolsActivePort'), 'utf8').catch(() => '');
    const port = text.split('\n')[0];
    if (port) return port;
    await new Promise((wake) => setTimeout(wake, 25));
  }
  throw new Error('the browser did not say where it listens');
}

function killed(started: ChildProcess): Promise<void> {
  return new Promise((done) => {
    if (started.exitCode !== null || started.signalCode !== null) return done();
    started.once('exit', () => done());
    if (started.pid) process.kill(-started.pid, 'SIGKILL');
  });
}
