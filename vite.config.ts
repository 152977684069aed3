import { defineConfig } from 'vitest/config';

const jsx = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

export default defineConfig({
  base: './',
  publicDir: 'assets',
  oxc: jsx,
  build: { target: 'es2022', outDir: 'dist' },
  test: {
    projects: [
      {
        oxc: jsx,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/{lengths,sewing,drawing,words}/**/*.test.ts'],
        },
      },
      {
        oxc: jsx,
        test: {
          name: 'dom',
          environment: 'jsdom',
          include: ['tests/{controls,screens,app}/**/*.test.tsx'],
        },
      },
    ],
  },
});
