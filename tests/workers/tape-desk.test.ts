import { expect, test } from 'vitest';
import type { ReadPage } from '../../src/tape/characters/read-page.ts';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { FromTapeWorker, LiveReading } from '../../src/tape/protocol.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { createDesk, type TapeReader } from '../../src/workers/tape-desk.ts';

const image: GreyImage = { width: 1, height: 1, pixels: new Uint8Array(1) };
const read: TapeReading = { width: 1, height: 1, outcome: 'read', scales: [] };

interface Lock {
  reading: TapeReading;
}

/** A reader that looks at one page and says what it was told. */
const reader: TapeReader<Lock> = {
  readTape: async (_: GreyImage, readPage: ReadPage, onProgress) => {
    onProgress?.(0.5);
    const seen = await readPage(image);
    return { ...read, tiltDegrees: seen.length };
  },
  lockOn: (reading) => ({ reading }),
  follow: (lock) => lock,
  snapTo: (_, { x, y }) => ({ x: x + 0.5, y, spread: 0.4 }),
  scaleByTouch: () => ({ ok: false, reason: 'one-only' }),
  pgmOf: () => new Uint8Array([80, 53]),
};

function desk(set: Partial<TapeReader<Lock>> = {}) {
  const posted: FromTapeWorker[] = [];
  const receive = createDesk({ ...reader, ...set }, (message) => posted.push(message));
  return { receive, posted, last: () => posted.at(-1) };
}

const symbol = { text: '4', confidence: 9, x0: 0, y0: 0, x1: 1, y1: 1 };

test('a photo is read with what the engine sees on its pages', async () => {
  const { receive, posted } = desk();
  const job = receive({ kind: 'job', id: 3, job: { kind: 'read', image } });
  await receive({ kind: 'symbols', page: 1, symbols: [symbol] });
  await job;
  expect(posted).toEqual([
    { kind: 'progress', id: 3, done: 0.5 },
    { kind: 'page', page: 1, bytes: new Uint8Array([80, 53]) },
    { kind: 'done', id: 3, answer: { ...read, tiltDegrees: 1 } },
  ]);
});

test('without an engine the job fails, and graduations can still be touched', async () => {
  const { receive, last } = desk();
  const job = receive({ kind: 'job', id: 3, job: { kind: 'read', image } });
  await receive({ kind: 'symbols', page: 1, symbols: undefined });
  await job;
  expect(last()).toMatchObject({ kind: 'failed', id: 3 });
  await receive({ kind: 'job', id: 4, job: { kind: 'snap', at: { x: 2, y: 1 } } });
  expect(last()).toEqual({ kind: 'done', id: 4, answer: { x: 2.5, y: 1, spread: 0.4 } });
  await receive({ kind: 'job', id: 5, job: { kind: 'touch', touches: [] } });
  expect(last()).toMatchObject({ answer: { ok: false, reason: 'one-only' } });
});

test('touching without a photo is a failure, not a hang; a held one will do', async () => {
  const { receive, last } = desk();
  await receive({ kind: 'job', id: 1, job: { kind: 'snap', at: { x: 2, y: 1 } } });
  expect(last()).toMatchObject({ kind: 'failed', id: 1 });
  await receive({ kind: 'job', id: 2, job: { kind: 'hold', image } });
  await receive({ kind: 'job', id: 3, job: { kind: 'snap', at: { x: 2, y: 1 } } });
  expect(last()).toMatchObject({ kind: 'done', id: 3 });
});

test('frames are followed from one reading on; a lost tape is told at once and read in the next', async () => {
  let reads = 0;
  let lost = false;
  const { receive, last } = desk({
    readTape: async () => {
      reads += 1;
      return read;
    },
    follow: (lock) => (lost ? undefined : { reading: { ...lock.reading, tiltDegrees: 9 } }),
  });
  const frame = async (id: number) => {
    await receive({ kind: 'job', id, job: { kind: 'frame', image } });
    const done = last();
    return done?.kind === 'done' ? (done.answer as LiveReading) : undefined;
  };
  expect(await frame(1)).toMatchObject({ held: true });
  expect(await frame(2)).toMatchObject({ held: true, reading: { tiltDegrees: 9 } });
  expect(reads).toBe(1);
  lost = true;
  expect(await frame(3)).toEqual({ held: false, asks: false });
  expect(reads).toBe(1);
  expect(await frame(4)).toMatchObject({ held: true });
  expect(reads).toBe(2);
});

test('a frame that is doubted or empty is not held', async () => {
  const asked: TapeReading = { ...read, outcome: 'ask' };
  const { receive, last } = desk({ readTape: async () => asked });
  await receive({ kind: 'job', id: 1, job: { kind: 'frame', image } });
  expect(last()).toEqual({ kind: 'done', id: 1, answer: { held: false, asks: true } });
});
