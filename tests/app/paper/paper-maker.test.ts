import { beforeEach, expect, test, vi } from 'vitest';
import { makePdf } from '../../../src/app/paper/paper-maker.ts';
import { safeName } from '../../../src/app/paper/save-file.ts';

class StandIn extends EventTarget {
  asked: unknown[] = [];
  ended = false;
  postMessage(message: unknown) {
    this.asked.push(message);
  }
  terminate() {
    this.ended = true;
  }
  say(data: unknown) {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

let worker: StandIn;
const seen: number[] = [];
const make = (signal = new AbortController().signal) =>
  makePdf(
    'Coat',
    [],
    { signal, onProgress: (done) => seen.push(done) },
    () => worker as unknown as Worker,
  );

beforeEach(() => {
  worker = new StandIn();
  seen.length = 0;
});

test('pages go in, progress and a file come out, and the worker is let go', async () => {
  const made = make();
  expect(worker.asked).toEqual([{ title: 'Coat', pages: [] }]);
  worker.say({ kind: 'progress', done: 0.5 });
  worker.say({ kind: 'done', bytes: new Uint8Array([37, 80, 68, 70]) });
  const file = await made;
  expect(file.type).toBe('application/pdf');
  expect(file.size).toBe(4);
  expect(seen).toEqual([0.5]);
  expect(worker.ended).toBe(true);
});

const FAILURES: [string, () => void, RegExp][] = [
  ['fails', () => worker.say({ kind: 'failed', why: 'no font' }), /no font/],
  ['is not there', () => worker.dispatchEvent(new Event('error')), /no worker/],
  [
    'says what can’t be read',
    () => worker.dispatchEvent(new MessageEvent('messageerror')),
    /unreadable/,
  ],
];

test.each(FAILURES)('a worker that %s ends it', async (_, fail, said) => {
  const made = make();
  fail();
  await expect(made).rejects.toThrow(said);
  expect(worker.ended).toBe(true);
});

test('it can be called off, also before it began', async () => {
  const control = new AbortController();
  const made = make(control.signal);
  control.abort();
  await expect(made).rejects.toThrow();
  expect(worker.ended).toBe(true);
  await expect(make(control.signal)).rejects.toThrow();
});

test('a worker that never answers is given up', async () => {
  vi.useFakeTimers();
  const made = make();
  const ended = expect(made).rejects.toThrow(/in time/);
  await vi.advanceTimersByTimeAsync(60_000);
  await ended;
  vi.useRealTimers();
});

test('file names are such that any system takes them', () => {
  expect(safeName('Coat: front/left?.pdf')).toBe('Coat- front-left-.pdf');
  expect(safeName('../../etc')).toBe('etc');
  expect(safeName('Жакет 1.pdf')).toBe('Жакет 1.pdf');
  expect(safeName('///')).toBe('file');
  expect([...safeName('a'.repeat(300))]).toHaveLength(80);
  const long = safeName(`${'a'.repeat(300)}.pdf`);
  expect([long.length, long.slice(-5)]).toEqual([80, 'a.pdf']);
  // Letters and their accents as two characters are one letter; where there is no such letter, both stay.
  expect(safeName('Cafe\u0301.pdf')).toBe('Caf\u00e9.pdf');
  expect(safeName('शर्ट.pdf')).toBe('शर्ट.pdf');
  // What has no name is still a PDF.
  for (const nothing of ['', '---', '😀', '. ']) {
    expect(safeName(`${nothing}.pdf`)).toBe('file.pdf');
  }
});
