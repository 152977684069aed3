import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Engine } from '../../src/camera/engine.ts';
import { createTapeBridge } from '../../src/camera/tape-bridge.ts';
import { TapeError } from '../../src/camera/tape-fault.ts';
import { hiring, nothing, photo } from './stand-ins.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const never = new AbortController().signal;
const settled = () => vi.advanceTimersByTimeAsync(0);

function bench() {
  const workers = hiring();
  const engine = {
    warm: vi.fn(),
    close: vi.fn(),
    symbols: vi.fn<Engine['symbols']>(async () => []),
  };
  return { bridge: createTapeBridge(workers.hire, engine), engine, ...workers };
}

/** What became of a promise, without waiting for it. */
function watched(promise: Promise<unknown>) {
  const fate: { value?: unknown; error?: unknown } = {};
  promise.then(
    (value) => {
      fate.value = value;
    },
    (error) => {
      fate.error = error;
    },
  );
  return fate;
}

test('a photo goes to the worker, progress and the reading come back', async () => {
  const { bridge, last } = bench();
  const heard: number[] = [];
  const reading = bridge.read(photo(), never, (done) => heard.push(done));
  expect(last().job.job).toEqual({ kind: 'read', image: photo() });
  last().say({ kind: 'progress', id: last().job.id, done: 0.5 });
  last().answer(nothing);
  expect(await reading).toEqual(nothing);
  expect(heard).toEqual([0.5]);
});

test('a newer photo drops the older one and its late answer', async () => {
  const { bridge, last, all } = bench();
  const older = watched(bridge.read(photo(), never));
  const first = last();
  const newer = watched(bridge.read(photo(), never));
  await settled();
  expect(older.error).toMatchObject({ name: 'AbortError' });
  expect(first.ended).toBe(true);
  first.answer(nothing);
  await settled();
  expect(newer.value).toBeUndefined();
  last().answer({ ...nothing, reason: 'no-numbers' });
  await settled();
  expect(newer.value).toMatchObject({ reason: 'no-numbers' });
  expect(all).toHaveLength(2);
});

test('aborting ends the worker, with the reason given; one aborted before never starts one', async () => {
  const { bridge, last, all } = bench();
  const wish = new AbortController();
  const fate = watched(bridge.read(photo(), wish.signal));
  wish.abort('another photo');
  await settled();
  expect(fate.error).toBe('another photo');
  expect(last().ended).toBe(true);
  await expect(bridge.read(photo(), wish.signal)).rejects.toBe('another photo');
  expect(all).toHaveLength(1);
});

const DEATHS: [string, (worker: ReturnType<ReturnType<typeof bench>['last']>) => void, string][] = [
  ['its script is missing', (worker) => worker.dispatchEvent(new Event('error')), 'reader-failed'],
  [
    'it sends what can’t be read',
    (worker) => worker.dispatchEvent(new Event('messageerror')),
    'reader-failed',
  ],
  [
    'it breaks at its work',
    (worker) => worker.say({ kind: 'failed', id: worker.job.id, message: 'RangeError' }),
    'reader-failed',
  ],
  ['it says nothing any more', () => vi.advanceTimersByTime(40_000), 'reader-slow'],
];

test.each(DEATHS)('a worker that dies settles the reading: %s', async (_, die, fault) => {
  const { bridge, last } = bench();
  const fate = watched(bridge.read(photo(), never));
  die(last());
  await settled();
  expect(fate.error).toBeInstanceOf(TapeError);
  expect(fate.error).toMatchObject({ fault });
});

test('after a death the next job has a fresh worker, with the photo at hand', async () => {
  const { bridge, last, all } = bench();
  const fate = watched(bridge.read(photo(), never));
  last().dispatchEvent(new Event('error'));
  await settled();
  expect(fate.error).toBeDefined();
  const snapped = bridge.snap({ x: 3, y: 4 }, never);
  expect(all).toHaveLength(2);
  expect(last().sent[0]).toMatchObject({ job: { kind: 'hold', image: photo() } });
  last().answer({ x: 3.5, y: 4 });
  expect(await snapped).toEqual({ x: 3.5, y: 4 });
});

test('pages go to the engine and what it saw comes back; waiting for it is no silence', async () => {
  const { bridge, engine, last } = bench();
  const seen = [{ text: '4', confidence: 96, x0: 0, y0: 0, x1: 9, y1: 9 }];
  let look: (symbols: typeof seen) => void = () => undefined;
  engine.symbols.mockReturnValue(
    new Promise((done) => {
      look = done;
    }),
  );
  const fate = watched(bridge.read(photo(), never));
  last().say({ kind: 'page', page: 1, bytes: new Uint8Array([66, 77]) });
  await vi.advanceTimersByTimeAsync(120_000);
  expect(fate.error).toBeUndefined();
  look(seen);
  await settled();
  expect(last().sent.at(-1)).toEqual({ kind: 'symbols', page: 1, symbols: seen });
  await vi.advanceTimersByTimeAsync(40_000);
  expect(fate.error).toMatchObject({ fault: 'reader-slow' });
});

test('an engine that can’t look is what the reading fails of', async () => {
  const { bridge, engine, last } = bench();
  engine.symbols.mockRejectedValue(new TapeError('engine-missing'));
  const fate = watched(bridge.read(photo(), never));
  last().say({ kind: 'page', page: 1, bytes: new Uint8Array() });
  await settled();
  expect(last().sent.at(-1)).toEqual({ kind: 'symbols', page: 1, symbols: undefined });
  last().say({ kind: 'failed', id: last().job.id, message: 'no symbols' });
  await settled();
  expect(fate.error).toMatchObject({ fault: 'engine-missing' });
});

test('an engine that fails late for an older photo is not what a newer one fails of', async () => {
  const { bridge, engine, last } = bench();
  let fail: (reason: unknown) => void = () => undefined;
  engine.symbols.mockReturnValue(
    new Promise((_, reject) => {
      fail = reject;
    }),
  );
  void bridge.read(photo(), never).catch(() => undefined);
  last().say({ kind: 'page', page: 1, bytes: new Uint8Array() });
  const fate = watched(bridge.read(photo(), never));
  fail(new TapeError('engine-missing'));
  await settled();
  last().say({ kind: 'failed', id: last().job.id, message: 'RangeError' });
  await settled();
  expect(fate.error).toMatchObject({ fault: 'reader-failed' });
});

test('an idle worker is let go, and a closed bridge forgets the photo', async () => {
  const { bridge, engine, last, all } = bench();
  bridge.warm();
  expect(engine.warm).toHaveBeenCalledOnce();
  const reading = bridge.read(photo(), never);
  expect(all).toHaveLength(1);
  last().answer(nothing);
  await reading;
  await vi.advanceTimersByTimeAsync(20_000);
  expect(last().ended).toBe(true);
  const fate = watched(bridge.read(photo(), never));
  bridge.close();
  await settled();
  expect(fate.error).toMatchObject({ name: 'AbortError' });
  void bridge.snap({ x: 0, y: 0 }, never).catch(() => undefined);
  expect(last().sent).toHaveLength(1);
  bridge.close();
});
