import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, test } from 'vitest';
import { appWords } from '../../src/words/app-words.ts';
import { newerWords } from '../../src/words/newer-words.ts';
import { phoneWords } from '../../src/words/phone-words.ts';
import { type Served, serveApp } from './built.ts';
import { launchBrowser, openApp, waitUntilKept } from './harness.ts';
import { SCREENS } from './screens.ts';
import { settled } from './settled.ts';

/** As long as a busy machine may take; no test waits for it to pass. */
const SLOW = { timeout: 45_000 };

let browser: Browser;
let folder: string;
let served: Served;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'thumbrule-offline-'));
  await cp(inject('built'), folder, { recursive: true });
  served = await serveApp(folder);
});

afterEach(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

test('once kept, every screen opens with the server gone', async () => {
  const app = await openApp(browser, served.address);
  await app.page.getByText(phoneWords.ready).waitFor();
  await app.page.getByText(phoneWords.readyNow).waitFor();
  await app.page.getByText(phoneWords.tape.here).waitFor();
  await served.close();
  for (const { hash } of SCREENS) {
    await app.page.goto(`${served.address}${hash}`);
    await app.page.reload();
    await app.page.locator('h1').first().waitFor();
    await settled(app.page);
  }
  // Asking the server for a newer worker is what may fail, and nothing else.
  expect(app.complaints.filter((said) => !said.endsWith('/sw.js'))).toEqual([]);
  await app.close();
});

test('it says ready once on a phone, and knows it on later starts', async () => {
  const app = await openApp(browser, served.address);
  await app.page.getByText(phoneWords.readyNow).waitFor();
  await app.page.reload();
  await app.page.getByText(phoneWords.ready).waitFor();
  expect(await app.page.getByText(phoneWords.readyNow).count()).toBe(0);
  await app.close();
});

test('a newer build waits for the maker; what was typed in another page survives it', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  const other = await app.context.newPage();
  await other.goto(`${served.address}#/convert`);
  const field = other.locator('.tiles input').first();
  await field.fill('12 3/8 in');

  await publishAnother();
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();
  expect(await builds(app.page, other)).toEqual(['first', 'first']);

  await app.page.getByText(phoneWords.takeUpdate).tap();
  await expect.poll(() => builds(app.page, other), SLOW).toEqual(['second', 'second']);
  await field.waitFor();
  expect(await field.inputValue()).toBe('12 3/8 in');
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a newer build that comes while a page is typed in neither reloads it nor loses a key', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  const typed = await app.context.newPage();
  await typed.goto(`${served.address}#/convert`);
  await countLoads(typed);
  const field = typed.locator('.tiles input').first();
  await field.focus();
  const keys = '1 1/2 in + 3 3/8 in + 12 mm + 4 cm + 5 1/16 in + 7 mm + 9 cm';
  const typing = typed.keyboard.type(keys, { delay: 60 });
  await publishAnother();
  await typed.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();
  // Even when it is taken in another page, where nobody types.
  await app.page.getByText(phoneWords.takeUpdate).tap();
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  await typing;
  expect(await loads(typed)).toBe(1);
  expect(await field.inputValue()).toBe(keys);

  await expect.poll(() => builds(typed), SLOW).toEqual(['second']);
  await field.waitFor();
  expect(await field.inputValue()).toBe(keys);
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a build that waits is taken at a start, when no other page is open', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  await publishAnother();
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();

  await app.page.reload();
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  await app.close();
});

test('a build that waits is taken at a start, even when a request starts the old worker again', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  await publishAnother();
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();

  await app.page.addInitScript(askOnWhenTakenOver);
  await app.page.reload();
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  await app.close();
});

test('it is not taken at a start while another page is open', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  await publishAnother();
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();

  const other = await app.context.newPage();
  await other.goto(served.address);
  await other.getByText(phoneWords.update).waitFor();
  expect(await builds(app.page, other)).toEqual(['first', 'first']);
  await app.close();
});

test('a screen that is gone from a host with a newer build is said to be, and the newer one taken', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block', at: '#/convert' });
  await app.page.locator('.tiles input').first().fill('12 3/8 in');
  await app.page.waitForURL(/12\+3%2F8/);
  await renameParts();
  // No key leads there with something typed; the address does.
  await app.page.evaluate(() => {
    location.hash = `${location.hash.replace('convert', 'hem')}`;
  });
  await app.page.getByText(newerWords.screen).waitFor();
  await app.page.getByRole('button', { name: appWords.again }).tap();
  await app.page.locator('.tiles input').first().waitFor();
  expect(app.page.url()).toMatch(/hem.*12\+3%2F8/);
  expect(app.complaints.every((said) => said.includes('404'))).toBe(true);
  await app.close();
});

test('a screen that can’t be fetched without a connection is said to be that', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block', at: '#/convert' });
  await app.page.locator('.tiles input').first().waitFor();
  await app.context.setOffline(true);
  await app.page.evaluate(() => {
    location.hash = '#/hem';
  });
  await app.page.getByText(appWords.notLoaded).waitFor();
  expect(await app.page.getByText(newerWords.screen).count()).toBe(0);
  await app.close();
});

test('a page whose browser refuses service workers works, and says what it lacks', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block' });
  await app.page.getByText(phoneWords.blocked.refused).waitFor();
  await app.page.goto(`${served.address}#/convert`);
  await app.page.locator('.pad button').first().waitFor();
  await app.close();
});

/** Asks for file after file as soon as a worker is told to take over, the first time. Runs in the page. */
function askOnWhenTakenOver() {
  const { postMessage } = ServiceWorker.prototype;
  ServiceWorker.prototype.postMessage = function (this: ServiceWorker, ...given: unknown[]) {
    Reflect.apply(postMessage, this, given);
    if (sessionStorage.getItem('asked on')) return;
    sessionStorage.setItem('asked on', 'yes');
    const ask = (times: number): Promise<void> =>
      fetch('favicon.svg').then(() => (times > 0 ? ask(times - 1) : undefined));
    void ask(20);
  };
}

/** Counts how often the page has been loaded, from now on; once it has been, at first. */
async function countLoads(page: Page): Promise<void> {
  await page.evaluate(() => sessionStorage.setItem('loads', '1'));
  await page.addInitScript(() => {
    sessionStorage.setItem('loads', String(Number(sessionStorage.getItem('loads')) + 1));
  });
}

const loads = (page: Page) => page.evaluate(() => Number(sessionStorage.getItem('loads')));

/** Puts another build in the place of the one that is served: the page says so of itself. */
async function publishAnother(): Promise<void> {
  const page = join(folder, 'index.html');
  await writeFile(
    page,
    (await readFile(page, 'utf8')).replace('<html', '<html data-build="second"'),
  );
  const worker = join(folder, 'sw.js');
  const code = await readFile(worker, 'utf8');
  // The list says of each file which revision it is of; of index.html another from now on.
  const entry = /(revision["`']?:["`'])(\w{32})(["`'],["`']?url["`']?:["`']index\.html)/;
  expect(code).toMatch(entry);
  await writeFile(worker, code.replace(entry, `$1${'2'.repeat(32)}$3`));
}

/** A build with other names for its first file and the hem's, as one with other code has. */
async function renameParts(): Promise<void> {
  const assets = join(folder, 'assets');
  const names = await readdir(assets);
  const newName = (name: string) => name.replace('-', '-2');
  const old = names.filter((name) => /^(base|hem)-.*js$/.test(name));
  for (const file of [join(folder, 'index.html'), ...names.map((name) => join(assets, name))]) {
    if (!/\.(html|js)$/.test(file)) continue;
    const text = await readFile(file, 'utf8');
    await writeFile(
      file,
      old.reduce((so, name) => so.replaceAll(name, newName(name)), text),
    );
  }
  for (const name of old) {
    await rename(join(assets, name), join(assets, newName(name)));
  }
}

function builds(...pages: Page[]): Promise<string[]> {
  return Promise.all(
    pages.map((page) =>
      page.evaluate(() => document.documentElement.dataset.build ?? 'first').catch(() => 'loading'),
    ),
  );
}
