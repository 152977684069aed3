import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gunzipSync, gzipSync } from 'node:zlib';
import { onlyForDigits } from './traineddata.mjs';

const ours = createRequire(import.meta.url);
const engines = createRequire(ours.resolve('tesseract.js/package.json'));

/** Where the engine would look when it is told nowhere: a foreign address, which it never may. */
const FOREIGN = /https:\/\/cdn\.jsdelivr\.net\/npm\//g;

const TYPES = {
  js: 'text/javascript',
  wasm: 'application/wasm',
  traineddata: 'application/octet-stream',
};

/**
 * The files of the character reader, as they are served: its worker script, its core with and
 * without SIMD, and language data cut down to what digits need.
 */
function engineFiles() {
  const core = ['simd-lstm', 'lstm'].flatMap((kind) => [
    `tesseract-core-${kind}.js`,
    `tesseract-core-${kind}.wasm`,
  ]);
  const script = readFileSync(ours.resolve('tesseract.js/dist/worker.min.js'), 'utf8');
  return new Map([
    ['worker.min.js', Buffer.from(script.replace(FOREIGN, './').replace(/\n\/\/#.*\s*$/, ''))],
    ...core.map((name) => pair(name, readFileSync(engines.resolve(`tesseract.js-core/${name}`)))),
    // Gzipped all the same; with that ending some servers would unpack it on the way, or say so.
    pair('eng.traineddata', slimData()),
  ]);
}

/**
 * @param {string} name
 * @param {Buffer} content
 * @returns {[string, Buffer]}
 */
function pair(name, content) {
  return [name, content];
}

/** Whole-number weights of the best data: the smallest that read as well as the largest. */
export function slimData() {
  const packed = readFileSync(
    ours.resolve('@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz'),
  );
  return gzipSync(onlyForDigits(gunzipSync(packed)), { level: 9 });
}

/** Raise it whenever other files are made from the same packages. */
const RECIPE = 1;

/** The folder's name says what is in it: a phone that has these very files never fetches them again. */
function folderName() {
  const pins = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  const { 'tesseract.js': script, '@tesseract.js-data/eng': data } = {
    ...pins.dependencies,
    ...pins.devDependencies,
  };
  return `engine/${script}-${data}-${RECIPE}/`;
}

/**
 * Serves the engine while developing, and puts it beside the app in a build. The app finds the
 * folder's name in `__ENGINE_FOLDER__`.
 *
 * @returns {import('vite').Plugin}
 */
export function engine() {
  const folder = folderName();
  /** @type {Map<string, Buffer> | undefined} */
  let made;
  const files = () => {
    made ??= engineFiles();
    return made;
  };
  return {
    name: 'engine',
    config: () => ({ define: { __ENGINE_FOLDER__: JSON.stringify(folder) } }),
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const [, name] = (request.url ?? '').split(`/${folder}`);
        const content = name && files().get(name);
        if (!content) return next();
        const ending = /** @type {keyof typeof TYPES} */ (name.split('.').at(-1));
        response.setHeader('Content-Type', TYPES[ending]);
        response.end(content);
      });
    },
    generateBundle() {
      for (const [name, source] of files()) {
        this.emitFile({ type: 'asset', fileName: folder + name, source });
      }
    },
  };
}
