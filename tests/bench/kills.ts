import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from '../../.ci/chromium.mjs';
import { FLAGS } from '../browser/harness.ts';
import { keptGarments } from '../browser/kept-garments.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run kills`: the browser is killed at a random moment while garments are being
 * kept, again and again on one device; whatever the app confirmed must be there.
 */
const KILLS = Number(process.env.KILLS ?? 100);

await withApp(async (_, address) => {
  const device = await mkdtemp(join(tmpdir(), 'thumbrule-kills-'));
  const confirmed = new Set<string>();
  let lost = 0;
  let unopened = 0;
  for (let kill = 0; kill <= KILLS; kill++) {
    const { page, end } = await startOn(device);
    await page.goto(`${address}#/garments`);
    await page.getByText('A new garment').waitFor();
    const { garments, damaged } = await keptGarments(page);
    const names = new Set(garments.map(({ name }) => name));
    if (damaged > 0) unopened += 1;
    lost += [...confirmed].filter((name) => !names.has(name)).length;
    if (kill < KILLS) {
      page.on('console', (said) => {
        if (said.text().startsWith('kept ')) confirmed.add(said.text().slice(5));
      });
      void page.evaluate(keepMany, kill).catch(() => undefined);
      await new Promise((wake) => setTimeout(wake, 30 + Math.random() * 500));
    }
    await end();
  }
  console.log(`${KILLS} kills, ${confirmed.size} confirmed, ${lost} lost, ${unopened} not opened`);
  await rm(device, { recursive: true, force: true });
  process.exitCode = lost + unopened > 0 || confirmed.size === 0 ? 1 : 0;
});

/** Makes garments by the screen's own form, each opened as it is kept, and says which the list shows then. */
async function keepMany(round: number): Promise<void> {
  const until = async <Value>(look: () => Value | null | false): Promise<Value> => {
    for (;;) {
      const seen = look();
      if (seen) return seen;
      await new Promise((wake) => setTimeout(wake, 1));
    }
  };
  for (let i = 0; ; i++) {
    const name = `round ${round} garment ${i}`;
    const input = await until(() =>
      document.querySelector<HTMLInputElement>('.garments form input[type=text]'),
    );
    input.value = name;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((wake) => setTimeout(wake, 0));
    input.form?.requestSubmit();
    await until(() => location.hash.startsWith('#/garments/open'));
    history.back();
    await until(() => document.querySelector(`article[aria-label="${name}"]`));
    console.log(`kept ${name}`);
  }
}

/** A browser of its own on a device's folder; `end` kills it without a warning. */
async function startOn(device: string) {
  const path = findChromium();
  if (!path) throw new Error('no Chromium: `node .ci/setup.mjs --browser` finds one');
  await rm(join(device, 'DevToolsActivePort'), { force: true });
  const process_ = spawn(
    path,
    ['--headless', ...FLAGS, '--remote-debugging-port=0', `--user-data-dir=${device}`],
    { stdio: 'ignore', detached: true },
  );
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(device)}`);
  const context = browser.contexts()[0];
  if (!context) throw new Error('the browser has no context');
  return { page: await context.newPage(), end: () => killed(process_) };
}

async function portOf(device: string): Promise<string> {
  for (let tries = 0; tries < 400; tries++) {
    const text = await readFile(join(device, 'DevToolsActivePort'), 'utf8').catch(() => '');
    const port = text.split('\n')[0];
    if (port) return port;
    await new Promise((wake) => setTimeout(wake, 25));
  }
  throw new Error('the browser did not say where it listens');
}

function killed(process_: ChildProcess): Promise<void> {
  return new Promise((done) => {
    process_.once('exit', () => done());
    if (process_.pid) process.kill(-process_.pid, 'SIGKILL');
  });
}
