import { fork } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Browser } from 'playwright-core';
import { build } from 'vite';
import { usedShare } from '../../src/lay/check-lay.ts';
import type { Point } from '../../src/lay/outline.ts';
import type { FromLayWorker } from '../../src/lay/protocol.ts';
import type { LayTask } from '../../src/lay/task.ts';
import { launchBrowser } from '../browser/harness.ts';

/**
 * `npm run bench:lay -- [--seconds N] [--workers N] [--seed N] [--clock processor [--slow N]] [FILE…]`: how
 * well the cloth is used after 1, 10, 30 and 60 s, by workers with different seeds in Chromium, of
 * published sets of pieces as they are printed in the research on strip packing. Without a file,
 * all sets that lie beside the project are taken. Each line: the set, then per cent used after so
 * many seconds. By `--clock processor` the same worker runs in Node, and a second is one of its own
 * processor time: for a machine that has other things to do; by `--slow 4` of one four times as slow.
 */
const SETS = '../shared/lay';
const MARKS = [1, 10, 30, 60];
const { values, positionals } = parseArgs({
  // Before them stand node, what runs this, and this.
  args: process.argv.slice(3),
  allowPositionals: true,
  options: {
    seconds: { type: 'string', default: '60' },
    workers: { type: 'string', default: '2' },
    seed: { type: 'string', default: '1' },
    clock: { type: 'string', default: 'wall' },
    slow: { type: 'string', default: '1' },
  },
});
const seconds = Number(values.seconds);
const marks = MARKS.filter((mark) => mark <= seconds);

interface PublishedSet {
  name: string;
  strip_height: number;
  items: {
    id: number;
    demand: number;
    allowed_orientations?: number[];
    shape: { data: Point[] };
  }[];
}

function taskOf({ strip_height, items }: PublishedSet): LayTask {
  return {
    width: strip_height,
    pieces: items.map(({ id, demand, allowed_orientations, shape }) => ({
      id: String(id),
      outline: shape.data,
      count: demand,
      turns: allowed_orientations ?? [0],
    })),
  };
}

async function workerCode(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      rolldownOptions: { input: 'src/workers/lay.ts', output: { format: 'iife' } },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !('output' in first)) throw new Error('the worker was not built');
  return first.output[0].code;
}

interface Found {
  at: number;
  length: number;
}

interface Watched {
  code: string;
  task: LayTask;
  seeds: number[];
  seconds: number;
}

/** What workers find, each in a process of its own, by the seconds of its processor time. */
async function watchProcesses({ code, task, seeds, seconds }: Watched): Promise<Found[]> {
  const one = (seed: number) =>
    new Promise<Found[]>((done, failed) => {
      const child = fork(join(import.meta.dirname, 'lay-in-process.mjs'));
      child.once('message', (found) => done(found as Found[]));
      child.once('error', failed);
      child.once('exit', (exit) => failed(new Error(`ended with ${exit} before it told`)));
      child.send({ code, job: { task, seed, seconds }, slow: Number(values.slow) });
    });
  return (await Promise.all(seeds.map(one))).flat();
}

/** In the page: what workers find, each better lay with the seconds it took. */
async function watch(given: Watched): Promise<Found[]> {
  const url = URL.createObjectURL(new Blob([given.code], { type: 'text/javascript' }));
  const began = performance.now();
  const found: Found[] = [];
  const one = (seed: number) =>
    new Promise<void>((done, failed) => {
      const worker = new Worker(url);
      worker.onerror = (event) => failed(new Error(event.message));
      worker.onmessage = ({ data }: MessageEvent<FromLayWorker>) => {
        if (data.kind === 'done') return done(worker.terminate());
        found.push({ at: (performance.now() - began) / 1000, length: data.lay.length });
      };
      worker.postMessage({ task: given.task, seed, seconds: given.seconds });
    });
  await Promise.all(given.seeds.map(one));
  return found;
}

async function watchInPage(browser: Browser, job: Watched): Promise<Found[]> {
  const page = await browser.newPage();
  const found = await page.evaluate(watch, job);
  await page.close();
  return found;
}

const files = positionals.length
  ? positionals
  : existsSync(SETS)
    ? readdirSync(SETS)
        .filter((name) => name.endsWith('.json'))
        .map((name) => join(SETS, name))
    : [];
if (!files.length) throw new Error(`no set: name files, or put them into ${SETS}`);

const code = await workerCode();
const browser = values.clock === 'wall' ? await launchBrowser() : undefined;
const sums = marks.map(() => 0);
try {
  for (const file of files) {
    const set = JSON.parse(readFileSync(file, 'utf8')) as PublishedSet;
    const task = taskOf(set);
    const seeds = Array.from({ length: Number(values.workers) }, (_, i) => Number(values.seed) + i);
    const job = { code, task, seeds, seconds };
    const found = await (browser ? watchInPage(browser, job) : watchProcesses(job));
    const first = Math.min(...found.map(({ at }) => at));
    const used = marks.map((mark) => {
      const lengths = found.filter(({ at }) => at <= mark).map(({ length }) => length);
      return lengths.length ? 100 * usedShare(task, { laid: [], length: Math.min(...lengths) }) : 0;
    });
    used.forEach((share, i) => {
      sums[i] = sums[i]! + share;
    });
    const told = marks.map((mark, i) => `at${mark} ${used[i]!.toFixed(2)}`);
    console.log(`${set.name} ${told.join(' ')} (first lay after ${first.toFixed(2)} s)`);
  }
} finally {
  await browser?.close();
}
const means = marks.map((mark, i) => `at${mark} ${(sums[i]! / files.length).toFixed(2)}`);
console.log(`mean of ${files.length} ${means.join(' ')}`);
