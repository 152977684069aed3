import { expect, test } from 'vitest';
import { runTool } from './run.ts';

test('the formatter and linter have nothing to say', async () => {
  const { ok, said } = await runTool('@biomejs/biome/bin/biome', [
    'check',
    '--error-on-warnings',
    '--colors=off',
    '.',
  ]);
  expect(ok, said).toBe(true);
});

test('no file, export or package is unused', async () => {
  const { ok, said } = await runTool('knip/bin/knip.js', ['--no-progress']);
  expect(ok, said).toBe(true);
});
