import { download } from './engine-download.ts';

/** Set by the build: `engine/` and a name that says what is in it. */
declare const __ENGINE_FOLDER__: string;

const folder = new URL(__ENGINE_FOLDER__, document.baseURI).href;

/** The cache of these very files. An app update leaves it alone. */
const CACHE = __ENGINE_FOLDER__.replace(/\/$/, '').replace('/', '-');

/** The folder with the language data, as the engine wants it: without the last stroke. */
export const dataPath = folder.replace(/\/$/, '');

/** The address of one of the engine's files. */
export function engineFile(name: string): string {
  return folder + name;
}

/** A module that does nothing but name a vector of 128 bits. Source: WebAssembly core, 5.3.2 and 5.4. */
const SIMD_MODULE = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15,
  253, 98, 11,
];

/** Whether the browser's WebAssembly has SIMD; undefined where it runs no WebAssembly. */
export function runsSimd(): boolean | undefined {
  if (typeof WebAssembly === 'undefined') return undefined;
  try {
    new WebAssembly.Module(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0)); // the empty module
  } catch {
    return undefined; // known, and refused by a policy
  }
  return WebAssembly.validate(Uint8Array.from(SIMD_MODULE));
}

/** The files this phone needs, the small ones first. */
export function neededFiles(): string[] {
  const core = runsSimd() ? 'tesseract-core-simd-lstm' : 'tesseract-core-lstm';
  return ['worker.min.js', `${core}.js`, 'eng.traineddata', `${core}.wasm`].map(engineFile);
}

let underWay: { until: AbortSignal | undefined; work: Promise<void> } | undefined;

/**
 * Stores what is not stored yet, file by file: what has arrived once is never fetched again.
 * Rejects when a file can't be had, or stalls. Where nothing can be stored it only sees that
 * they can be had: ask `hasEngine`. Asked again while it is at it, it fetches nothing twice.
 *
 * @param until ends it, for who has asked with it: another who has asked still gets the files
 */
export async function fetchEngine(until?: AbortSignal): Promise<void> {
  until?.throwIfAborted();
  const joined = underWay;
  if (!joined) return begin(until);
  return joined.work.catch((error: unknown) => {
    if (joined.until?.aborted) return fetchEngine(until);
    throw error;
  });
}

function begin(until: AbortSignal | undefined): Promise<void> {
  const work = fetchMissing(until).finally(() => {
    underWay = undefined;
  });
  underWay = { until, work };
  return work;
}

async function fetchMissing(until: AbortSignal | undefined): Promise<void> {
  const store = await openStore();
  for (const url of neededFiles()) {
    if (await store?.match(url)) continue;
    const file = await download(url, until);
    // Storage may be full: it works as long as there is a connection.
    await store?.put(url, file).catch(() => undefined);
  }
  if (store) await forgetOlder();
}

/** Whether every file is stored on this phone. */
export async function hasEngine(): Promise<boolean> {
  const store = await openStore();
  if (!store) return false;
  const found = await Promise.all(neededFiles().map((url) => store.match(url)));
  return found.every((file) => file !== undefined);
}

async function openStore(): Promise<Cache | undefined> {
  // Not there on an insecure address; refused in some private windows.
  return globalThis.caches?.open(CACHE).catch(() => undefined);
}

async function forgetOlder(): Promise<void> {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith('engine-') && name !== CACHE);
  await Promise.all(older.map((name) => caches.delete(name)));
}
