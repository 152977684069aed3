// The tests of the arithmetic and the garment as modules that are loaded once, and what each is made of.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const FOLDERS = ['lengths', 'sewing', 'garment'];
/** Fewer of them, folders or files (`BY=lengths,garment/cause`), load and settle a part of the code sooner. */
const BY = process.env.BY?.split(',') ?? FOLDERS;
const HERE = 'tests/mutants/vitest.mjs';
/** Where the sources are as they are written: the copy that is worked on has the mutants in them. */
export const SOURCES = resolve(import.meta.dirname, '../..');

/** The tests of every file: bundled by the first process, found there by the next ones. */
export async function loadTests(folder) {
  process.env.MUTANTS = '1';
  const parts = join(folder, 'parts.json');
  if (!existsSync(parts)) writeFileSync(parts, JSON.stringify(await bundle(folder)));
  const partsOf = JSON.parse(readFileSync(parts, 'utf8'));
  const { testsOf } = await import(inFolder(folder, basename(HERE, '.mjs')));
  const tests = [];
  for (const [name, file] of Object.entries(testFiles())) {
    const found = await testsOf(file, () => import(inFolder(folder, name)));
    tests.push(...found.map((test) => ({ ...test, parts: partsOf[name] })));
  }
  return tests;
}

const inFolder = (folder, name) => pathToFileURL(join(folder, `${name}.mjs`)).href;

/** Every test file by the name of its bundle. */
function testFiles() {
  return Object.fromEntries(
    FOLDERS.flatMap((folder) =>
      readdirSync(join('tests', folder), { recursive: true })
        .filter((file) => file.endsWith('.test.ts') && isWanted(`${folder}/${file}`))
        .map((file) => [
          `${folder}-${file.replace('.test.ts', '').replaceAll('/', '-')}`,
          resolve('tests', folder, file),
        ]),
    ),
  );
}

const isWanted = (file) =>
  BY.some((one) => file.startsWith(`${one}/`) || file === `${one}.test.ts`);

/** For each test file the digest of itself and all it imports. */
async function bundle(outDir) {
  const here = resolve(HERE);
  const partsOf = {};
  await build({
    configFile: false,
    logLevel: 'error',
    plugins: [{ name: 'parts', transform: inPlace, generateBundle: graph }],
    resolve: {
      alias: [
        { find: /^vitest$/, replacement: here },
        { find: /^fast-check$/, replacement: resolve('tests/laws/fast-check.ts') },
      ],
    },
    build: {
      ssr: true,
      outDir,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        input: { [basename(HERE, '.mjs')]: here, ...testFiles() },
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  return partsOf;

  function graph() {
    for (const [name, file] of Object.entries(testFiles())) {
      const all = new Set();
      const add = (id) => {
        const info = all.has(id) || !id.startsWith(process.cwd()) ? null : this.getModuleInfo(id);
        if (!info) return;
        all.add(id);
        for (const next of [...info.importedIds, ...info.dynamicallyImportedIds]) add(next);
      };
      add(file);
      partsOf[name] = digest([...all].sort().map(asWritten));
    }
  }
}

/** What looks beside itself finds there what it looks for, though the bundle lies elsewhere. */
function inPlace(code, id) {
  return code.replaceAll('import.meta.dirname', JSON.stringify(dirname(id)));
}

function asWritten(id) {
  const file = relative(process.cwd(), id);
  const from = file.startsWith('src') ? join(SOURCES, file) : id;
  return `${file}\n${readFileSync(from, 'utf8')}`;
}

export function digest(parts) {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part).update('\0');
  return hash.digest('base64url').slice(0, 22);
}
