import { beforeEach, expect, test } from 'vitest';
import { lookForLay } from '../../../src/app/lay/lay-maker.ts';
import type { FromLayWorker, ToLayWorker } from '../../../src/lay/protocol.ts';
import type { Lay, LayTask } from '../../../src/lay/task.ts';

class StandIn extends EventTarget {
  asked: ToLayWorker[] = [];
  ended = false;
  postMessage(message: ToLayWorker) {
    this.asked.push(message);
  }
  terminate() {
    this.ended = true;
  }
  say(data: FromLayWorker) {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

class Page extends EventTarget {
  hidden = false;
  turn(hidden: boolean) {
    this.hidden = hidden;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

const task: LayTask = { width: 1500, pieces: [] };
const lay = (length: number): Lay => ({ laid: [], length });
const better = (length: number): FromLayWorker => ({ kind: 'better', lay: lay(length) });

let all: StandIn[];
let page: Page;
let clock: number;
let found: number[];

beforeEach(() => {
  [all, page, clock, found] = [[], new Page(), 0, []];
});

function look({
  workers = 2,
  signal = new AbortController().signal,
  from = undefined as Lay | undefined,
} = {}) {
  const startWorker = () => {
    const worker = new StandIn();
    all.push(worker);
    return worker as unknown as Worker;
  };
  const onBetter = (one: Lay) => found.push(one.length);
  const phone = { startWorker, workers, page, now: () => clock };
  return lookForLay({ task, from, seconds: 60 }, { signal, onBetter }, phone);
}

const running = () => all.filter(({ ended }) => !ended).length;

test('two look, each its own way, and what is told is ever shorter', async () => {
  const looking = look();
  expect(all.map(({ asked }) => asked[0])).toEqual([
    { task, seed: 1, seconds: 60 },
    { task, seed: 2, seconds: 60 },
  ]);
  all[0]!.say(better(2000));
  all[1]!.say(better(2100));
  all[1]!.say(better(1900));
  expect(found).toEqual([2000, 1900]);
  all[0]!.say({ kind: 'done', fits: true });
  expect(running()).toBe(1);
  all[1]!.say({ kind: 'done', fits: true });
  expect(await looking).toBe(true);
  expect(running()).toBe(0);
});

test('what one finds fits nowhere fits nowhere', async () => {
  const looking = look();
  all[0]!.say({ kind: 'done', fits: false });
  expect(await looking).toBe(false);
  expect(running()).toBe(0);
});

test('put away nothing runs, and back it goes on from the best, another way, for what is left', async () => {
  const looking = look({ from: lay(3000) });
  expect(all[0]!.asked[0]!.from).toEqual(lay(3000));
  all[1]!.say(better(2500));
  clock = 20_000;
  page.turn(true);
  expect(running()).toBe(0);
  // What comes too late is not taken.
  all[0]!.say(better(1));
  page.turn(false);
  expect(all.slice(2).map(({ asked }) => asked[0])).toEqual([
    { task, seed: 3, seconds: 40, from: lay(2500) },
    { task, seed: 4, seconds: 40, from: lay(2500) },
  ]);
  expect(found).toEqual([2500]);
  for (const worker of all.slice(2)) worker.say({ kind: 'done', fits: true });
  expect(await looking).toBe(true);
});

test('begun on a hidden page it waits', async () => {
  page.hidden = true;
  const looking = look({ workers: 1 });
  expect(all).toEqual([]);
  page.turn(false);
  all[0]!.say({ kind: 'done', fits: true });
  expect(await looking).toBe(true);
});

test('called off all end, also before they began and while the page is hidden', async () => {
  for (const hide of [false, true]) {
    const control = new AbortController();
    const looking = look({ signal: control.signal });
    if (hide) page.turn(true);
    control.abort();
    await expect(looking).rejects.toThrow();
    expect(running()).toBe(0);
    page.turn(false);
    expect(running()).toBe(0);
    await expect(look({ signal: control.signal })).rejects.toThrow();
  }
});

test('one that fails leaves the other looking; with none left it ends', async () => {
  const looking = look();
  all[0]!.dispatchEvent(new Event('error'));
  all[1]!.say(better(2000));
  expect(found).toEqual([2000]);
  all[1]!.dispatchEvent(new MessageEvent('messageerror'));
  await expect(looking).rejects.toThrow(/unreadable/);
  expect(running()).toBe(0);
});

test('where no worker can be started it ends', async () => {
  const startWorker = () => {
    throw new Error('refused');
  };
  const options = { signal: new AbortController().signal, onBetter: () => undefined };
  const phone = { startWorker, workers: 2, page, now: () => 0 };
  await expect(lookForLay({ task, seconds: 1 }, options, phone)).rejects.toThrow('refused');
});
