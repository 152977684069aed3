import { cp, mkdtemp, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { pseudoSource } from './pseudo-words.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** What a build is made of. */
const PARTS = ['src', 'service-worker', 'assets', '.ci', 'index.html', 'vite.config.ts'];

/**
 * A copy of the project in another language, in a temporary folder: the folder of its words and
 * one line of `package.json` are all that differs.
 */
export async function secondLanguage(): Promise<string> {
  const copy = await mkdtemp(join(tmpdir(), 'thumbrule-pseudo-'));
  for (const part of [...PARTS, 'LICENSE', 'tsconfig.json', 'package-lock.json']) {
    await cp(join(ROOT, part), join(copy, part), { recursive: true });
  }
  await symlink(join(ROOT, 'node_modules'), join(copy, 'node_modules'));
  await translate(join(copy, 'src/words/en'), join(copy, 'src/words/pseudo'));
  const about = await readFile(join(ROOT, 'package.json'), 'utf8');
  await writeFile(
    join(copy, 'package.json'),
    about.replace('src/words/en/*', 'src/words/pseudo/*'),
  );
  return copy;
}

async function translate(from: string, to: string): Promise<void> {
  await cp(from, to, { recursive: true });
  const files = await readdir(from, { recursive: true, withFileTypes: true });
  for (const file of files.filter((entry) => entry.isFile())) {
    const name = relative(from, join(file.parentPath, file.name));
    await writeFile(join(to, name), pseudoSource(await readFile(join(from, name), 'utf8')));
  }
}
