import { expect, test } from 'vitest';
import { runTool } from './run.ts';
import { filesIn, ROOT } from './sources.ts';

/** Every zone has a tsconfig of its own, which says what it may touch. */
const ZONES = [
  'tsconfig.json',
  ...['src', 'service-worker', 'tests', '.ci']
    .flatMap(filesIn)
    .filter((path) => path.endsWith('tsconfig.json')),
];

interface Checked {
  faults: string[];
  /** The project's own files the compiler read. */
  read: string[];
}

const checks = checkTwoAtATime();

test.each(ZONES)('the compiler is content with %s', async (zone) => {
  expect((await checks.get(zone))?.faults).toEqual([]);
});

test('every file of ours is read by the compiler', async () => {
  const read = new Set((await Promise.all(checks.values())).flatMap((checked) => checked.read));
  const ours = ['src', 'service-worker', 'tests', '.ci']
    .flatMap(filesIn)
    .filter((path) => /\.(tsx?|mjs)$/.test(path));
  expect(ours.filter((path) => !read.has(path))).toEqual([]);
});

function checkTwoAtATime(): Map<string, Promise<Checked>> {
  let [one, other]: [Promise<unknown>, Promise<unknown>] = [Promise.resolve(), Promise.resolve()];
  const started = new Map<string, Promise<Checked>>();
  for (const zone of ZONES) {
    const check = one.then(() => checkZone(zone));
    [one, other] = [other, check];
    started.set(zone, check);
  }
  return started;
}

async function checkZone(zone: string): Promise<Checked> {
  const args = ['-p', zone, '--pretty', 'false', '--listFiles'];
  const { ok, said } = await runTool('typescript/bin/tsc', args);
  const lines = said.split('\n').filter(Boolean);
  const listed = (line: string) => line.startsWith(ROOT) && !line.includes('error TS');
  const faults = lines.filter((line) => !listed(line));
  if (!ok && faults.length === 0) faults.push('the compiler failed without a word');
  return { faults, read: lines.filter(listed).map((line) => line.slice(ROOT.length)) };
}
