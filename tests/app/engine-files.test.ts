import { afterEach, beforeEach, expect, test, vi } from 'vitest';

vi.stubGlobal('__ENGINE_FOLDER__', 'engine/7-1-1/');
const { engineFile, fetchEngine, hasEngine, neededFiles, runsSimd } = await import(
  '../../src/app/engine-files.ts'
);

/** Caches by name, each with its files by address; `full` ones take nothing. */
const stored = new Map<string, Map<string, Response>>();
let full = false;
const asked: string[] = [];
let missing: string | undefined;

beforeEach(() => {
  stored.clear();
  asked.length = 0;
  full = false;
  missing = undefined;
  vi.stubGlobal('caches', {
    open: async (name: string) => {
      const files = stored.get(name) ?? new Map<string, Response>();
      stored.set(name, files);
      return {
        match: async (url: string) => files.get(url),
        put: async (url: string, response: Response) => {
          if (full) throw new DOMException('no space', 'QuotaExceededError');
          files.set(url, response);
        },
      };
    },
    keys: async () => [...stored.keys()],
    delete: async (name: string) => stored.delete(name),
  });
  vi.stubGlobal('fetch', async (url: string) => {
    asked.push(url);
    if (missing && url.endsWith(missing)) throw new TypeError('no connection');
    return new Response('file');
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

test('every file is stored once, under the name of its version', async () => {
  expect(await hasEngine()).toBe(false);
  await fetchEngine();
  expect([...(stored.get('engine-7-1-1')?.keys() ?? [])]).toEqual(neededFiles());
  expect(await hasEngine()).toBe(true);
  await fetchEngine();
  expect(asked).toEqual(neededFiles());
});

test('a download that failed goes on file by file', async () => {
  missing = '.wasm';
  await expect(fetchEngine()).rejects.toThrow('no connection');
  expect(await hasEngine()).toBe(false);
  missing = undefined;
  asked.length = 0;
  await fetchEngine();
  expect(asked).toEqual(neededFiles().filter((url) => url.endsWith('.wasm')));
});

test('a file that is not on the server is an error, not an engine', async () => {
  vi.stubGlobal('fetch', async () => new Response('not found', { status: 404 }));
  await expect(fetchEngine()).rejects.toThrow(/404/);
  expect(await hasEngine()).toBe(false);
});

test('files of an older version are let go only when the new ones are all here', async () => {
  stored.set('engine-6-1-1', new Map([['old', new Response()]]));
  stored.set('workbox-precache', new Map());
  missing = '.wasm';
  await fetchEngine().catch(() => undefined);
  expect(stored.has('engine-6-1-1')).toBe(true);
  missing = undefined;
  await fetchEngine();
  expect([...stored.keys()]).toEqual(['workbox-precache', 'engine-7-1-1']);
});

test('full storage keeps nobody from reading with a connection', async () => {
  full = true;
  await fetchEngine();
  expect(await hasEngine()).toBe(false);
});

test('where nothing can be stored, the files are only asked for', async () => {
  vi.stubGlobal('caches', undefined);
  await fetchEngine();
  expect(asked).toEqual(neededFiles());
  expect(await hasEngine()).toBe(false);
});

test('the phone’s own kind of core is wanted, and none where WebAssembly is refused', () => {
  expect(runsSimd()).toBe(true);
  expect(neededFiles()).toContain(engineFile('tesseract-core-simd-lstm.wasm'));
  vi.spyOn(WebAssembly, 'validate').mockReturnValue(false);
  expect(neededFiles()).toContain(engineFile('tesseract-core-lstm.wasm'));
  vi.stubGlobal('WebAssembly', {
    Module: class {
      constructor() {
        throw new EvalError('refused by the content policy');
      }
    },
  });
  expect(runsSimd()).toBeUndefined();
  vi.stubGlobal('WebAssembly', undefined);
  expect(runsSimd()).toBeUndefined();
});
