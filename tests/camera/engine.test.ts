import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createEngine, type EngineParts } from '../../src/camera/engine.ts';
import { hiring, type StandInWorker } from './stand-ins.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const settled = () => vi.advanceTimersByTimeAsync(0);

function bench(set: Partial<EngineParts> = {}) {
  const workers = hiring();
  const parts: EngineParts = {
    startWorker: workers.hire,
    fetchFiles: async () => undefined,
    corePath: 'https://here/engine/1/core.js',
    dataPath: 'https://here/engine/1',
    ...set,
  };
  return { engine: createEngine(parts), ...workers };
}

/** Answers every step as the engine's script does, until it is asked to look at a page. */
async function comeUp(last: () => StandInWorker) {
  for (const action of ['load', 'loadLanguage', 'initialize', 'setParameters']) {
    await settled();
    expect(last().sent.at(-1)).toMatchObject({ action });
    last().say({ jobId: last().sent.at(-1)?.jobId, status: 'progress', data: {} });
    resolve(last(), {});
  }
  await settled();
}

function resolve(worker: StandInWorker, data: unknown) {
  worker.say({ jobId: worker.sent.at(-1)?.jobId, status: 'resolve', data });
}

const page = new Uint8Array([66, 77]);
const bbox = { x0: 1, y0: 2, x1: 3, y1: 4 };
const blocks = [
  {
    paragraphs: [
      { lines: [{ words: [{ symbols: [{ text: '4', confidence: 96, bbox }] }] }] },
      { lines: [] },
    ],
  },
];

test('it is started once, ahead, and then looks at page after page', async () => {
  const { engine, last, all } = bench();
  engine.warm();
  await comeUp(last);
  for (let i = 0; i < 2; i++) {
    const seen = engine.symbols(page);
    await settled();
    expect(last().sent.at(-1)).toMatchObject({ action: 'recognize', payload: { image: page } });
    resolve(last(), { blocks });
    expect(await seen).toEqual([{ text: '4', confidence: 96, ...bbox }]);
  }
  expect(all).toHaveLength(1);
});

test('a page without characters gives none', async () => {
  const { engine, last } = bench();
  const seen = engine.symbols(page);
  await comeUp(last);
  resolve(last(), { blocks: null });
  expect(await seen).toEqual([]);
});

test('only digits are looked for, with the space between them', async () => {
  const { engine, last } = bench();
  engine.warm();
  await comeUp(last);
  expect(last().sent.at(-1)).toMatchObject({
    payload: {
      params: { tessedit_char_whitelist: '0123456789 ', tessedit_pageseg_mode: '6' },
    },
  });
});

test('without WebAssembly it is refused, and nothing is started', async () => {
  const { engine, all } = bench({ corePath: undefined });
  await expect(engine.symbols(page)).rejects.toMatchObject({ fault: 'engine-refused' });
  expect(all).toHaveLength(0);
});

test('files that can’t be had are said, and tried again the next time', async () => {
  const fetchFiles = vi.fn(async () => Promise.reject(new TypeError('offline')));
  const { engine } = bench({ fetchFiles });
  engine.warm();
  await settled();
  await expect(engine.symbols(page)).rejects.toMatchObject({ fault: 'engine-missing' });
  expect(fetchFiles).toHaveBeenCalledTimes(2);
});

const FAILURES: [string, (worker: StandInWorker) => void][] = [
  ['its script is missing', (worker) => worker.dispatchEvent(new Event('error'))],
  [
    'its core is refused and it never answers',
    () => {
      vi.advanceTimersByTime(25_000);
    },
  ],
  [
    'it rejects',
    (worker) => worker.say({ jobId: worker.sent.at(-1)?.jobId, status: 'reject', data: 'no' }),
  ],
];

test.each(FAILURES)(
  'an engine that fails settles, and a fresh one is started: %s',
  async (_, fail) => {
    const { engine, last, all } = bench();
    const fate = expect(engine.symbols(page)).rejects.toMatchObject({ fault: 'engine-failed' });
    await settled();
    fail(last());
    await fate;
    expect(last().ended).toBe(true);
    const seen = engine.symbols(page);
    await comeUp(last);
    resolve(last(), { blocks });
    expect(await seen).toHaveLength(1);
    expect(all).toHaveLength(2);
  },
);

test('one that breaks at a page is ended; one that is idle is let go', async () => {
  const { engine, last, all } = bench();
  const fate = expect(engine.symbols(page)).rejects.toMatchObject({ fault: 'engine-failed' });
  await comeUp(last);
  await vi.advanceTimersByTimeAsync(25_000);
  await fate;
  expect(last().ended).toBe(true);
  engine.warm();
  await comeUp(last);
  expect(all).toHaveLength(2);
  await vi.advanceTimersByTimeAsync(120_000);
  expect(last().ended).toBe(true);
});
