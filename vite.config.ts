import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { homeWords, SCREEN_WORDS } from '#words/phone/home-words.ts';
import { pageWords } from '#words/phone/page-words.ts';
import { engine } from './.ci/engine.mjs';
import { licences } from './.ci/licences.mjs';
import Order from './.ci/order.mjs';
import { together } from './.ci/together.mjs';

const oxc = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

/** Laws are tried with a seed that stays, or by `npm run laws` with fresh ones. */
const fastCheck = {
  alias: [
    {
      find: /^fast-check$/,
      replacement: fileURLToPath(new URL('tests/laws/fast-check.ts', import.meta.url)),
    },
  ],
};
/**
 * Tests with a window and modules each: they put other modules in the place of ours, or ours know
 * what has happened on the phone. All others of the window's share one (`isolate`), which takes a
 * fifth of the time.
 */
const APART = [
  'tests/app/tape/*.test.{ts,tsx}',
  'tests/app/garment/field-tape.test.tsx',
  'tests/app/offline/watch.test.ts',
  'tests/camera/open-file.test.ts',
  'tests/screens/tape{,-ask,-lines,-live}.test.tsx',
  'tests/calculations/{no-drawing,step-rounding}.test.ts',
];

/** A law tried 100,000 times takes its time. */
const LAW_TIMEOUT = process.env.LAWS ? 24 * 3_600_000 : 60_000;

const dom = {
  oxc,
  plugins: [licences()],
  resolve: fastCheck,
  test: {
    environment: 'jsdom' as const,
    setupFiles: ['tests/dom-effects.ts'],
    testTimeout: LAW_TIMEOUT,
    // What a file of many screens leaves is put away on a machine that may be busy.
    hookTimeout: 60_000,
  },
};

/** What the service worker keeps at install: every part of the app, and nothing by accident. */
const KEPT = [
  'index.html',
  'manifest.webmanifest',
  'favicon.svg',
  'assets/*.{js,css,woff2}',
  'icons/*.png',
];

/**
 * What is fetched as one file, besides what the page itself imports: each with all that it
 * imports and nothing before it has. All else is a file of its own, fetched when it is wanted.
 */
const TOGETHER = {
  /** What puts a style on the page: home needs it, and nothing else of what comes late. */
  style: ['src/controls/adopt.ts'],
  /** Asks for a newer build of the app: also where nothing else of it can be had. */
  newer: ['src/controls/newer/'],
  /** What comes just after the first answer, on every calculation; and the record of a garment. */
  late: [
    'src/app/start/',
    'src/calculation/',
    'src/calculations/list.ts',
    'src/calculations/convert/',
    'src/controls/',
    'src/garment/record/',
    'src/storage/',
    // The arithmetic of rows and pieces: with it, their calculations would be more than a screen may add.
    'src/sewing/closures/',
    'src/sewing/edging/',
    'src/sewing/lacing/',
    'src/sewing/pieces/',
  ],
  /** One mark after another, of a calculation or of a garment. */
  follow: ['src/controls/follow/'],
};

const PAPER = '#f5efdf';

const pwa = VitePWA({
  strategies: 'injectManifest',
  srcDir: 'service-worker',
  filename: 'sw.ts',
  // src/app/offline/offline.ts registers it, after first paint.
  injectRegister: false,
  includeManifestIcons: false,
  injectManifest: { globPatterns: KEPT, rollupFormat: 'iife' },
  manifest: {
    id: 'thumbrule',
    name: homeWords.name,
    short_name: homeWords.name,
    description: pageWords.installed,
    lang: pageWords.lang,
    dir: 'ltr',
    start_url: './',
    scope: './',
    display: 'standalone',
    theme_color: PAPER,
    background_color: PAPER,
    categories: ['utilities', 'productivity'],
    icons: [
      { src: 'favicon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
      {
        src: 'icons/icon-maskable-512.png',
        sizes: '512x512',
        type: 'image/png',
        purpose: 'maskable',
      },
    ],
    share_target: {
      action: './share',
      method: 'POST',
      enctype: 'multipart/form-data',
      params: {
        files: [
          { name: 'photo', accept: ['image/*'] },
          { name: 'garment', accept: ['application/json', '.json', 'text/plain', '.txt'] },
        ],
      },
    },
    file_handlers: [{ action: './#/garments/receive', accept: { 'application/json': ['.json'] } }],
    shortcuts: [
      shortcut(SCREEN_WORDS.convert, './#/convert'),
      shortcut(SCREEN_WORDS.closures, './#/closures'),
      shortcut(SCREEN_WORDS.tape, './#/tape'),
    ],
  },
});

/** Home as it reads before any script: the same words and links that the app draws. */
const homeFirst: Plugin = {
  name: 'home-first',
  transformIndexHtml: (html) =>
    html
      .replace('<html lang="en">', `<html lang="${pageWords.lang}">`)
      .replace('%title%', pageWords.title)
      .replace('%description%', pageWords.description)
      .replace('<!--home-->', homeHtml())
      // How it is laid out here is for us alone, and every byte is waited for.
      .replace(/\n\s+/g, '\n'),
};

function homeHtml(): string {
  const links = Object.entries(SCREEN_WORDS).map(([id, title]) => `<a href="#/${id}">${title}</a>`);
  return [
    `<div class="home"><main><h1>${homeWords.name}</h1><p class="lead">${homeWords.lead}</p>`,
    `<p>${homeWords.about}</p></main>`,
    `<nav aria-label="${homeWords.calculations}">${links.join('')}</nav></div>`,
  ].join('');
}

/**
 * Each part fetched later brings its own style along (src/controls/adopt.ts), so
 * nothing has to be preloaded beside it, and the helper for that is not needed.
 */
const plainImports: Plugin = {
  name: 'plain-imports',
  enforce: 'pre',
  load: (id) =>
    id.endsWith('vite/preload-helper.js')
      ? 'export const __vitePreload = (load) => load();'
      : undefined,
  // What that helper would have been told, a list of styles for each import, goes too.
  generateBundle: {
    order: 'post',
    handler: (_, bundle) => {
      for (const part of Object.values(bundle)) {
        if (part.type !== 'chunk') continue;
        part.code = part.code
          .replace(/^const __vite__mapDeps=.*\n/, '')
          .replace(/,(__vite__mapDeps\(\[[\d,]*\]\)|\[\]|void 0),import\.meta(\.url)?(?=\))/g, '');
      }
    },
  },
};

export default defineConfig({
  // Addresses relative to the page, so that the build works from any folder of any host.
  base: './',
  // There is one page; a part that is missing is an error, not another copy of the page.
  appType: 'mpa',
  publicDir: 'assets',
  oxc,
  plugins: [homeFirst, plainImports, engine(), licences(), pwa],
  build: {
    target: 'es2022',
    cssTarget: ['chrome123', 'safari17.5', 'firefox120'],
    minify: 'terser',
    terserOptions: {
      ecma: 2020,
      module: true,
      compress: { passes: 4, pure_getters: true, unsafe_arrows: true, unsafe_methods: true },
    },
    outDir: 'dist',
    // A part inlined as data: would need a wider content policy for fonts.
    assetsInlineLimit: 0,
    // Every part is on the phone soon after the first visit; telling the browser ahead what a
    // part needs would only make the first page larger.
    modulePreload: false,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: together({
            root: fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, ''),
            page: 'src/app/start/main.tsx',
            groups: TOGETHER,
            shared: { by: /src\/calculations\/(\w+)\/(?:\1|outputs|drawing)\.ts$/, with: 'late' },
          }),
        },
      },
    },
  },
  worker: {
    format: 'es',
    rolldownOptions: { output: { entryFileNames: 'assets/worker-[name]-[hash].js' } },
  },
  preview: { port: 4173, host: true },
  test: {
    reporters: ['default', './.ci/reporter.mjs'],
    // One more than the two cores: a browser's test waits more than it works.
    maxWorkers: 3,
    sequence: { sequencer: Order },
    projects: [
      {
        oxc,
        resolve: fastCheck,
        test: {
          name: 'unit',
          environment: 'node',
          isolate: false,
          testTimeout: LAW_TIMEOUT,
          include: [
            'tests/{lengths,sewing,tape,tapes,lay,garment,drawing,words,workers}/**/*.test.ts',
          ],
        },
      },
      {
        ...dom,
        test: {
          ...dom.test,
          name: 'dom',
          isolate: false,
          include: [
            'tests/{calculation,calculations,controls,screens,app,storage,camera}/**/*.test.{ts,tsx}',
          ],
          exclude: APART,
        },
      },
      { ...dom, test: { ...dom.test, name: 'apart', include: APART } },
      {
        test: {
          name: 'structure',
          environment: 'node',
          include: ['tests/structure/**/*.test.ts'],
          exclude: ['tests/structure/built/**'],
          testTimeout: 240_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts', 'tests/structure/built/**/*.test.ts'],
          globalSetup: ['tests/browser/global-setup.ts'],
          setupFiles: ['tests/browser/until-built.ts'],
          testTimeout: 120_000,
          hookTimeout: 60_000,
          // Chromium’s renderer crashed once in seven whole runs, and in none of 240 visits after: twice is ours.
          retry: { count: 1, condition: /(Target|Page) crashed/ },
        },
      },
    ],
  },
});

function shortcut(name: string, url: string) {
  return { name, url, icons: [{ src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' }] };
}
