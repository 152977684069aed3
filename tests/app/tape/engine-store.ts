import { vi } from 'vitest';

vi.stubGlobal('__ENGINE_FOLDER__', 'engine/7-1-1/');

/** A phone's caches and its connection, as the engine's files meet them. */
export function engineStore() {
  const set = {
    /** Caches by name, each with its files by address. */
    stored: new Map<string, Map<string, Response>>(),
    /** Nothing more can be stored. */
    full: false,
    /** Every address asked for. */
    asked: [] as string[],
    /** The ending of the file that can't be had. */
    missing: undefined as string | undefined,
  };
  vi.stubGlobal('caches', {
    open: async (name: string) => {
      const files = set.stored.get(name) ?? new Map<string, Response>();
      set.stored.set(name, files);
      return {
        match: async (url: string) => files.get(url),
        put: async (url: string, response: Response) => {
          if (set.full) throw new DOMException('no space', 'QuotaExceededError');
          await response.clone().arrayBuffer();
          files.set(url, response);
        },
      };
    },
    keys: async () => [...set.stored.keys()],
    delete: async (name: string) => set.stored.delete(name),
  });
  vi.stubGlobal('fetch', async (url: string) => {
    set.asked.push(url);
    if (set.missing && url.endsWith(set.missing)) throw new TypeError('no connection');
    return new Response('file');
  });
  return set;
}

/** A file of which only the beginning comes; then it `breaks`, or nothing more. */
export function begun(signal: AbortSignal | null | undefined, breaks: boolean): Response {
  return new Response(
    new ReadableStream({
      start(out) {
        out.enqueue(new Uint8Array(3));
        if (breaks) out.error(new TypeError('broken off'));
        signal?.addEventListener('abort', () => out.error(signal.reason));
      },
    }),
  );
}
