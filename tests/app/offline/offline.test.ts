import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { holdPage } from '../../../src/app/offline/hand.ts';
import { watchOffline } from '../../../src/app/offline/offline.ts';
import { StandInWorker, StandInWorkers } from './stand-in-workers.ts';

const phone = { kept: true };

beforeEach(() => {
  vi.useFakeTimers();
  phone.kept = true;
  sessionStorage.clear();
  vi.stubGlobal('isSecureContext', true);
  vi.stubGlobal('caches', {
    match: async () => (phone.kept ? new Response('') : undefined),
  });
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

/** Starts the watch on a phone whose service workers are given, and waits until it has registered. */
async function start(workers: StandInWorkers | undefined) {
  Object.defineProperty(navigator, 'serviceWorker', { value: workers, configurable: true });
  const order: string[] = [];
  const news = {
    onReady: vi.fn(),
    onUpdate: vi.fn<(apply: () => void) => void>(),
    onBlocked: vi.fn(),
    onTaking: vi.fn(),
    onSettled: vi.fn(),
    flush: vi.fn<() => void | Promise<void>>(() => void order.push('flushed')),
  };
  const reload = vi.fn(() => void order.push('reloaded'));
  watchOffline(news, reload);
  if (workers) await vi.waitFor(() => expect(workers.register).toHaveBeenCalled());
  await idle();
  return { news, reload, order, takeUpdate: () => news.onUpdate.mock.calls.at(-1)?.[0]() };
}

/**
 * Long enough for workbox-window's own wait of 200 ms before it calls a worker waiting. What
 * workers say meanwhile comes by ports, which no stand-in clock moves.
 */
async function idle(milliseconds = 250): Promise<void> {
  await vi.advanceTimersByTimeAsync(milliseconds);
  await portsHeard();
  await vi.advanceTimersByTimeAsync(0);
}

function portsHeard(): Promise<void> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((done) => {
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage('last');
  });
}

test('a first visit is ready when everything is kept, and is not reloaded', async () => {
  const workers = new StandInWorkers();
  const { news, reload } = await start(workers);
  expect(workers.register).toHaveBeenCalledWith('./sw.js', { updateViaCache: 'none' });
  expect(news.onReady).not.toHaveBeenCalled();

  workers.claim(workers.registration.find());
  await idle();
  expect(news.onReady).toHaveBeenCalledOnce();
  expect(news.onUpdate).not.toHaveBeenCalled();
  expect(reload).not.toHaveBeenCalled();
});

test('a later start is ready at once', async () => {
  const { news } = await start(StandInWorkers.controlled());
  expect(news.onReady).toHaveBeenCalledOnce();
  expect(news.onBlocked).not.toHaveBeenCalled();
});

test('a newer build waits for the maker, and what was typed is put away before the reload', async () => {
  const workers = StandInWorkers.controlled();
  const { news, order, takeUpdate } = await start(workers);
  const newer = workers.registration.find();
  workers.wait(newer);
  await idle();
  expect(news.onUpdate).toHaveBeenCalledOnce();
  expect(newer.asked).toEqual([]);
  expect(order).toEqual([]);

  takeUpdate();
  await idle(0);
  expect(newer.asked).toEqual([{ type: 'SKIP_WAITING', onlyIfAlone: false }]);
  workers.claim(newer);
  await idle();
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('a page of a first visit reloads too when a second worker takes over', async () => {
  const workers = new StandInWorkers();
  const { order } = await start(workers);
  workers.claim(workers.registration.find());
  await idle();
  expect(order).toEqual([]);
  workers.claim(workers.registration.find());
  await idle();
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('a build that already waits at a start is taken at once', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  workers.wait(waiting);
  const { news, order } = await start(workers);
  expect(waiting.asked).toEqual([{ type: 'SKIP_WAITING', onlyIfAlone: true }]);
  workers.claim(waiting);
  await idle();
  expect(order).toEqual(['flushed', 'reloaded']);
  expect(news.onUpdate).not.toHaveBeenCalled();
});

test('it is offered instead when another page is open', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  waiting.others = 1;
  workers.wait(waiting);
  const { news, takeUpdate } = await start(workers);
  expect(news.onUpdate).toHaveBeenCalledOnce();
  takeUpdate();
  await idle(0);
  expect(waiting.asked.at(-1)).toEqual({ type: 'SKIP_WAITING', onlyIfAlone: false });
});

test('it is offered instead when something has been touched', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  workers.wait(waiting);
  const started = start(workers);
  window.dispatchEvent(new Event('pointerdown'));
  const { news } = await started;
  expect(news.onUpdate).toHaveBeenCalledOnce();
  expect(waiting.asked).toEqual([]);
});

test('a worker that does not answer is offered instead', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  waiting.answers = false;
  workers.wait(waiting);
  const { news } = await start(workers);
  expect(news.onUpdate).not.toHaveBeenCalled();
  await idle(2000);
  expect(news.onUpdate).toHaveBeenCalledOnce();
});

test('a build that is willing and held up is taken by loading the page anew, three times at most', async () => {
  const workers = StandInWorkers.controlled();
  workers.wait(new StandInWorker());
  const first = await start(workers);
  await idle(1500);
  expect(first.order).toEqual([]);
  await idle(1000);
  expect(first.order).toEqual(['flushed', 'reloaded']);
  for (let again = 0; again < 2; again++) {
    const later = await start(workers);
    await idle(2500);
    expect(later.order).toEqual(['flushed', 'reloaded']);
  }
  const last = await start(workers);
  await idle(2500);
  expect(last.order).toEqual([]);
  expect(last.news.onUpdate).toHaveBeenCalledOnce();
});

test('the count begins anew once none waits', async () => {
  const workers = StandInWorkers.controlled();
  sessionStorage.setItem('held-up', '3');
  await start(workers);
  workers.wait(new StandInWorker());
  const { order } = await start(workers);
  await idle(2500);
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('one that is held up when the maker takes it is taken by loading the page anew, too', async () => {
  const workers = StandInWorkers.controlled();
  const { order, news, takeUpdate } = await start(workers);
  workers.wait(workers.registration.find());
  await idle();
  takeUpdate();
  await idle(0);
  expect(news.onTaking.mock.calls).toEqual([['asked']]);
  await idle(2500);
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('with another page open it is waited for, which is said, and offered again after a minute', async () => {
  const workers = StandInWorkers.controlled();
  const { order, news, takeUpdate } = await start(workers);
  const newer = workers.registration.find();
  newer.others = 1;
  workers.wait(newer);
  await idle();
  takeUpdate();
  await idle(0);
  await idle(2500);
  expect(news.onTaking.mock.calls).toEqual([['asked'], ['held up']]);
  expect(news.onUpdate).toHaveBeenCalledOnce();
  await idle(60_000);
  expect(news.onUpdate).toHaveBeenCalledTimes(2);
  expect(order).toEqual([]);

  takeUpdate();
  await idle(0);
  await idle(2500);
  workers.claim(newer);
  await idle();
  expect(news.onUpdate).toHaveBeenCalledTimes(2);
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('the worker in charge is woken before a newer one is asked: one that starts can’t be ended', async () => {
  const workers = StandInWorkers.controlled();
  const { takeUpdate } = await start(workers);
  const newer = workers.registration.find();
  workers.wait(newer);
  await idle();
  const { controller } = workers;
  if (!controller) throw new Error('no worker is in charge');
  controller.answers = false;
  takeUpdate();
  await idle(0);
  expect(controller.asked).toEqual([{ type: 'AWAKE' }]);
  expect(newer.asked).toEqual([]);
  // One of an older build knows no such question; by now it runs.
  await idle(5000);
  expect(newer.asked).toEqual([{ type: 'SKIP_WAITING', onlyIfAlone: false }]);
});

test('one that is replaced by a yet newer one when it is taken is offered again', async () => {
  const workers = StandInWorkers.controlled();
  const { news, takeUpdate } = await start(workers);
  const newer = workers.registration.find();
  workers.wait(newer);
  await idle();
  takeUpdate();
  await idle();
  newer.become('redundant');
  await idle();
  expect(news.onUpdate).toHaveBeenCalledTimes(2);
});

test('it is settled at once that no build is taken over, where none waits or none can', async () => {
  expect((await start(new StandInWorkers())).news.onSettled).toHaveBeenCalledOnce();
  expect((await start(StandInWorkers.controlled())).news.onSettled).toHaveBeenCalledOnce();
  const refusing = new StandInWorkers();
  refusing.register.mockRejectedValue(new DOMException('no', 'SecurityError'));
  expect((await start(refusing)).news.onSettled).toHaveBeenCalledOnce();
});

test('where a build waits it is settled only when it is not taken', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  workers.wait(waiting);
  const { news } = await start(workers);
  workers.claim(waiting);
  await idle();
  expect(news.onSettled).not.toHaveBeenCalled();

  const others = StandInWorkers.controlled();
  const refusing = new StandInWorker();
  refusing.others = 1;
  others.wait(refusing);
  expect((await start(others)).news.onSettled).toHaveBeenCalledOnce();
});

test('a page that can not put away what was typed stays, and the reload is offered', async () => {
  const workers = StandInWorkers.controlled();
  const { news, reload, takeUpdate } = await start(workers);
  news.flush.mockRejectedValueOnce(new Error('storage full'));
  workers.claim(workers.registration.find());
  await idle();
  expect(reload).not.toHaveBeenCalled();
  expect(news.onUpdate).toHaveBeenCalledOnce();

  takeUpdate();
  await idle();
  expect(reload).toHaveBeenCalledOnce();
});

test('a page with a photo open is not loaded anew before it is put away, even where that was agreed to', async () => {
  const workers = StandInWorkers.controlled();
  const { order, takeUpdate } = await start(workers);
  const newer = workers.registration.find();
  workers.wait(newer);
  await idle();
  takeUpdate();
  const letGo = holdPage();
  workers.claim(newer);
  await idle(60_000);
  expect(order).toEqual([]);
  letGo();
  letGo();
  await idle();
  expect(order).toEqual(['flushed', 'reloaded']);
});

test('with a photo open at a start a build that waits is offered, not taken', async () => {
  const workers = StandInWorkers.controlled();
  const waiting = new StandInWorker();
  workers.wait(waiting);
  const letGo = holdPage();
  const { news } = await start(workers);
  letGo();
  expect(news.onUpdate).toHaveBeenCalledOnce();
  expect(waiting.asked).toEqual([]);
});

test('without a connection a page that is not kept is not given up', async () => {
  const workers = StandInWorkers.controlled();
  const { news, reload } = await start(workers);
  phone.kept = false;
  vi.spyOn(navigator, 'onLine', 'get').mockReturnValue(false);
  workers.claim(workers.registration.find());
  await idle();
  expect(reload).not.toHaveBeenCalled();
  expect(news.onUpdate).toHaveBeenCalledOnce();
});

test('it looks again when the connection or the maker comes back', async () => {
  const workers = StandInWorkers.controlled();
  await start(workers);
  expect(workers.registration.update).not.toHaveBeenCalled();
  window.dispatchEvent(new Event('online'));
  document.dispatchEvent(new Event('visibilitychange'));
  expect(workers.registration.update).toHaveBeenCalledTimes(2);
});

test('a part that did not arrive is said', async () => {
  const workers = new StandInWorkers();
  const { news } = await start(workers);
  workers.registration.find().become('redundant');
  expect(news.onBlocked).toHaveBeenCalledExactlyOnceWith('incomplete');
});

test('says why it can not work offline, and never throws', async () => {
  expect((await start(undefined)).news.onBlocked).toHaveBeenCalledExactlyOnceWith('unsupported');

  const refusing = new StandInWorkers();
  refusing.register.mockRejectedValue(new DOMException('no', 'SecurityError'));
  expect((await start(refusing)).news.onBlocked).toHaveBeenCalledExactlyOnceWith('refused');

  const silent = new StandInWorkers();
  silent.register.mockResolvedValue(undefined as never);
  expect((await start(silent)).news.onBlocked).toHaveBeenCalledExactlyOnceWith('refused');

  vi.stubGlobal('isSecureContext', false);
  expect((await start(undefined)).news.onBlocked).toHaveBeenCalledExactlyOnceWith('insecure');
});

test('a refusal to a page that is controlled is not one: it works offline', async () => {
  const workers = StandInWorkers.controlled();
  workers.register.mockRejectedValue(new TypeError('no connection'));
  const { news } = await start(workers);
  expect(news.onReady).toHaveBeenCalledOnce();
  expect(news.onBlocked).not.toHaveBeenCalled();
});
