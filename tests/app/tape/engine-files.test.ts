import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { begun, engineStore } from './engine-store.ts';

const { engineFile, fetchEngine, hasEngine, neededFiles, runsSimd } = await import(
  '../../../src/app/tape/engine-files.ts'
);

let phone: ReturnType<typeof engineStore>;

beforeEach(() => {
  phone = engineStore();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

test('every file is stored once, under the name of its version', async () => {
  expect(await hasEngine()).toBe(false);
  await fetchEngine();
  expect([...(phone.stored.get('engine-7-1-1')?.keys() ?? [])]).toEqual(neededFiles());
  expect(await hasEngine()).toBe(true);
  await fetchEngine();
  expect(phone.asked).toEqual(neededFiles());
});

test('a download that failed goes on file by file', async () => {
  phone.missing = '.wasm';
  await expect(fetchEngine()).rejects.toThrow('no connection');
  expect(await hasEngine()).toBe(false);
  phone.missing = undefined;
  phone.asked.length = 0;
  await fetchEngine();
  expect(phone.asked).toEqual(neededFiles().filter((url) => url.endsWith('.wasm')));
});

test('a download that is ended goes no further, but for another who has asked too', async () => {
  let asked = 0;
  vi.stubGlobal('fetch', (_url: string, { signal }: RequestInit) => {
    asked += 1;
    if (asked > 1) return Promise.resolve(new Response('file'));
    return new Promise((_, reject) => {
      signal?.addEventListener('abort', () => reject(signal.reason));
    });
  });
  const later = new AbortController();
  const idle = fetchEngine(later.signal);
  const wanted = fetchEngine();
  await vi.waitFor(() => expect(asked).toBe(1));
  later.abort();
  await expect(idle).rejects.toThrow(/abort/i);
  await wanted;
  expect(await hasEngine()).toBe(true);
  await expect(fetchEngine(later.signal)).rejects.toThrow(/abort/i);
});

test('a file that is not on the server is an error, not an engine', async () => {
  vi.stubGlobal('fetch', async () => new Response('not found', { status: 404 }));
  await expect(fetchEngine()).rejects.toThrow(/404/);
  expect(await hasEngine()).toBe(false);
});

test('a file that breaks off half-way is an error, and is not stored', async () => {
  vi.stubGlobal('fetch', async (url: string, asked?: RequestInit) =>
    url.endsWith('.wasm') ? begun(asked?.signal, true) : new Response('file'),
  );
  await expect(fetchEngine()).rejects.toThrow('broken off');
  expect(await hasEngine()).toBe(false);
});

test.each(['at its start', 'half-way'])(
  'a download that stalls %s is tried once more and given up; the next try starts afresh',
  async (where) => {
    vi.useFakeTimers();
    let stalls = true;
    const asked = vi.fn((url: string, { signal }: RequestInit): Promise<Response> => {
      if (!stalls || !url.endsWith('.wasm')) return Promise.resolve(new Response('file'));
      if (where === 'half-way') return Promise.resolve(begun(signal, false));
      return new Promise((_, reject) => {
        signal?.addEventListener('abort', () => reject(signal.reason));
      });
    });
    vi.stubGlobal('fetch', asked);
    const fate = expect(fetchEngine()).rejects.toThrow(/nothing comes/);
    await vi.advanceTimersByTimeAsync(19_000);
    expect(asked).toHaveBeenCalledTimes(5);
    await vi.advanceTimersByTimeAsync(1_000);
    await fate;
    stalls = false;
    await fetchEngine();
    expect(await hasEngine()).toBe(true);
  },
);

test('a slow download that goes on is left to go on, and one try is all it takes', async () => {
  vi.useFakeTimers();
  const asked = vi.fn(async () => {
    let left = 10;
    return new Response(
      new ReadableStream({
        async pull(out) {
          await new Promise((done) => setTimeout(done, 9_000));
          left -= 1;
          if (left > 0) out.enqueue(new Uint8Array(1));
          else out.close();
        },
      }),
    );
  });
  vi.stubGlobal('fetch', asked);
  const both = Promise.all([fetchEngine(), fetchEngine()]);
  await vi.advanceTimersByTimeAsync(400_000);
  await both;
  expect(asked).toHaveBeenCalledTimes(4);
});

test('files of an older version are let go only when the new ones are all here', async () => {
  phone.stored.set('engine-6-1-1', new Map([['old', new Response()]]));
  phone.stored.set('workbox-precache', new Map());
  phone.missing = '.wasm';
  await fetchEngine().catch(() => undefined);
  expect(phone.stored.has('engine-6-1-1')).toBe(true);
  phone.missing = undefined;
  await fetchEngine();
  expect([...phone.stored.keys()]).toEqual(['workbox-precache', 'engine-7-1-1']);
});

test('full storage keeps nobody from reading with a connection', async () => {
  phone.full = true;
  await fetchEngine();
  expect(await hasEngine()).toBe(false);
});

test('where nothing can be stored, the files are only asked for', async () => {
  vi.stubGlobal('caches', undefined);
  await fetchEngine();
  expect(phone.asked).toEqual(neededFiles());
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
