import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** One file of the project is taken to say something else: MOVED names it, MOVED_TEXT where its text is. */
const { MOVED, MOVED_TEXT } = process.env;
const moved = MOVED && resolve(MOVED);

export default defineConfig({
  root: resolve(import.meta.dirname, '../..'),
  resolve: { alias: { 'fast-check': resolve(import.meta.dirname, '../laws/fast-check.ts') } },
  plugins: [
    {
      name: 'moved-constant',
      enforce: 'pre',
      load: (id) =>
        moved && MOVED_TEXT && id === moved ? readFileSync(MOVED_TEXT, 'utf8') : undefined,
    },
  ],
  test: {
    environment: 'node',
    isolate: false,
    bail: 1,
    testTimeout: 120_000,
    include: ['tests/{tape,tapes,workers}/**/*.test.ts'],
  },
});
