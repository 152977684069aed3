import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './sources.ts';

const FOLDERS = ['assets', 'service-worker', 'src', 'tests'];
const FILES = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'index.html',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'vite.config.ts',
];
/** Made by the commands and kept out by .gitignore. */
const MADE = ['node_modules', 'dist', 'coverage'];

test('nothing lies at the top but what belongs there', () => {
  const strangers = readdirSync(ROOT, { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.') && !MADE.includes(name))
    .filter((entry) => !(entry.isDirectory() ? FOLDERS : FILES).includes(entry.name))
    .map(({ name }) => name);
  expect(strangers).toEqual([]);
});

test('what belongs there is there', () => {
  expect([...FOLDERS, ...FILES].filter((name) => !existsSync(join(ROOT, name)))).toEqual([]);
});
