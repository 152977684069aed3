import { defineConfig } from 'vitest/config';

/** The tests that a mutant of the arithmetic or the garment must make fail; nothing of a page. */
export default defineConfig({
  test: {
    include: ['tests/{lengths,sewing,garment}/**/*.test.ts'],
    testTimeout: 60_000,
  },
});
