import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { inTurn, quietly } from '../../../src/app/tape/engine-lock.ts';
import { StandInLocks } from './stand-in-locks.ts';

const setLocks = (value: unknown) =>
  Object.defineProperty(navigator, 'locks', { value, configurable: true });

beforeEach(() => setLocks(new StandInLocks()));
afterEach(() => void Reflect.deleteProperty(navigator, 'locks'));

/** A download that ends when it is let, or by its signal. */
function download() {
  const finish: (() => void)[] = [];
  const work = vi.fn(
    (stop?: AbortSignal) =>
      new Promise<void>((done, ended) => {
        finish.push(done);
        stop?.addEventListener('abort', () => ended(stop.reason));
      }),
  );
  return { work, finish: () => finish.at(-1)?.() };
}

/** Work that is under way until it is let end. */
function held() {
  let end = () => {};
  const over = new Promise<string>((done) => {
    end = () => done('taken');
  });
  const work = vi.fn(() => over);
  return { work, end };
}

const begun = (work: ReturnType<typeof vi.fn>, times: number) =>
  vi.waitFor(() => expect(work).toHaveBeenCalledTimes(times));

/** As long as anything that was going to begin would have begun. */
const afterAll = async () => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

test('of two pages one downloads, then the other', async () => {
  const [one, two] = [download(), download()];
  const first = inTurn(one.work);
  const second = inTurn(two.work);
  await begun(one.work, 1);
  await afterAll();
  expect(two.work).not.toHaveBeenCalled();
  one.finish();
  await first;
  await begun(two.work, 1);
  two.finish();
  await second;
});

test('a takeover begins once the download has ended, which goes on after it', async () => {
  const { work, finish } = download();
  const whole = inTurn(work);
  await begun(work, 1);
  const takeover = held();
  const order: string[] = [];
  work.mock.calls[0]?.[0]?.addEventListener('abort', () => order.push('ended'));
  takeover.work.mockImplementationOnce(() => {
    order.push('asked');
    return takeover.work();
  });
  const taken = quietly(takeover.work);
  await begun(takeover.work, 2);
  expect(order).toEqual(['ended', 'asked']);
  await afterAll();
  expect(work).toHaveBeenCalledTimes(1);
  takeover.end();
  expect(await taken).toBe('taken');
  await begun(work, 2);
  finish();
  await whole;
});

test('a download asked for during a takeover waits for its end', async () => {
  const takeover = held();
  const taken = quietly(takeover.work);
  await begun(takeover.work, 1);
  const { work, finish } = download();
  const whole = inTurn(work);
  await afterAll();
  expect(work).not.toHaveBeenCalled();
  takeover.end();
  await taken;
  await begun(work, 1);
  finish();
  await whole;
});

test('two pages that take over at once both come to their end, each asking once', async () => {
  const [one, two] = [held(), held()];
  const both = Promise.all([quietly(one.work), quietly(two.work)]);
  await begun(two.work, 1);
  one.end();
  two.end();
  expect(await both).toEqual(['taken', 'taken']);
  expect(one.work).toHaveBeenCalledOnce();
  expect(two.work).toHaveBeenCalledOnce();
});

test('a takeover doesn’t wait long for a page that doesn’t end its download', async () => {
  vi.spyOn(AbortSignal, 'timeout').mockReturnValue(AbortSignal.abort());
  const deaf = vi.fn(() => new Promise<void>(() => undefined));
  void inTurn(deaf);
  await begun(deaf, 1);
  expect(await quietly(async () => 'taken')).toBe('taken');
});

test('what fails is said to who asked, and is not tried again', async () => {
  const work = vi.fn(async () => {
    throw new Error('no connection');
  });
  await expect(inTurn(work)).rejects.toThrow('no connection');
  await expect(quietly(work)).rejects.toThrow('no connection');
  expect(work).toHaveBeenCalledTimes(2);
});

test.each([
  ['has none', undefined],
  ['refuses them', { request: () => Promise.reject(new DOMException('no', 'SecurityError')) }],
])('where the browser %s, all is done at once', async (_, locks) => {
  setLocks(locks);
  const { work, finish } = download();
  const whole = inTurn(work);
  await begun(work, 1);
  expect(await quietly(async () => 'taken')).toBe('taken');
  finish();
  await whole;
});
