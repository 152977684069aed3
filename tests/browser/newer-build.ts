import { readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** Counts how often the page has been loaded, from now on; once it has been, at first. */
export async function countLoads(page: Page): Promise<void> {
  await page.evaluate(() => sessionStorage.setItem('loads', '1'));
  await page.addInitScript(() => {
    sessionStorage.setItem('loads', String(Number(sessionStorage.getItem('loads')) + 1));
  });
}

/** How often it has been by now. */
export const loads = (page: Page) => page.evaluate(() => Number(sessionStorage.getItem('loads')));

/** Puts another build in the place of the one that is served: the page says so of itself. */
export async function publishAnother(folder: string): Promise<void> {
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

/** A build with other names for all of its scripts, as one with other code has. */
export async function renameParts(folder: string): Promise<void> {
  const assets = join(folder, 'assets');
  const names = await readdir(assets);
  const newName = (name: string) => name.replace('-', '-2');
  const old = names.filter((name) => name.endsWith('.js'));
  for (const file of [join(folder, 'index.html'), ...old.map((name) => join(assets, name))]) {
    const text = await readFile(file, 'utf8');
    const renamed = old.reduce((so, name) => so.replaceAll(name, newName(name)), text);
    await writeFile(file, renamed);
  }
  for (const name of old) await rename(join(assets, name), join(assets, newName(name)));
}

/** Which build each page is of. */
export function builds(...pages: Page[]): Promise<string[]> {
  return Promise.all(
    pages.map((page) =>
      page.evaluate(() => document.documentElement.dataset.build ?? 'first').catch(() => 'loading'),
    ),
  );
}
