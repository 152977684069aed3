import { relative } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { runTool } from './run.ts';
import { filesIn, ROOT } from './sources.ts';

/** Every zone has a tsconfig of its own, which says what it may touch. */
const ZONES = [
  'tsconfig.json',
  ...['src', 'service-worker', 'tests', '.ci']
    .flatMap(filesIn)
    .filter((path) => path.endsWith('tsconfig.json')),
];

const TESTS = 'tests/tsconfig.json';

/** The compiler that runs as machine code: a third of the time of the one that can be asked in scripts. */
const COMPILER = 'typescript-native/bin/tsc';
// Two run side by side, on machines with as many cores.
const HOW = ['--noEmit', '--pretty', 'false', '--listFiles', '--singleThreaded'];

interface Checked {
  faults: readonly string[];
  /** The files of ours the compiler checked in this zone. */
  checked: readonly string[];
}

const zones: Record<string, Checked> = {};

async function check(zone: string): Promise<void> {
  const { ok, said } = await runTool(COMPILER, ['-p', zone, ...HOW]);
  const lines = said.split('\n').filter(Boolean);
  const files = lines.filter((line) => line.startsWith('/') || /^[A-Z]:\//.test(line));
  const faults = lines.filter((line) => !files.includes(line));
  zones[zone] = {
    faults: ok || faults.length > 0 ? faults : ['the compiler ended without a word'],
    checked: files.map((path) => relative(ROOT, path)),
  };
}

// A quarter of a minute alone, some minutes beside other work. The tests are as much as all the rest.
beforeAll(async () => {
  const rest = async () => {
    for (const zone of ZONES.filter((one) => one !== TESTS)) await check(zone);
  };
  await Promise.all([check(TESTS), rest()]);
}, 600_000);

test.each(ZONES)('the compiler is content with %s', (zone) => {
  expect(zones[zone]?.faults).toEqual([]);
});

test('every file of ours is checked by the compiler', () => {
  const checked = new Set(Object.values(zones).flatMap((zone) => zone.checked));
  const ours = ['src', 'service-worker', 'tests', '.ci']
    .flatMap(filesIn)
    .filter((path) => /\.(tsx?|mjs)$/.test(path));
  expect(ours.filter((path) => !checked.has(path))).toEqual([]);
});
