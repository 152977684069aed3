import { beforeAll, expect, test } from 'vitest';
import { runScript } from './run.ts';
import { filesIn } from './sources.ts';

/** Every zone has a tsconfig of its own, which says what it may touch. */
const ZONES = [
  'tsconfig.json',
  ...['src', 'service-worker', 'tests', '.ci']
    .flatMap(filesIn)
    .filter((path) => path.endsWith('tsconfig.json')),
];

interface Checked {
  faults: readonly string[];
  /** The files of ours the compiler checked in this zone. */
  checked: readonly string[];
}

let zones: Readonly<Record<string, Checked>>;

// Half a minute alone, some minutes beside other work.
beforeAll(async () => {
  const { ok, said } = await runScript('tests/structure/compile.mjs', ZONES);
  expect(ok, said).toBe(true);
  zones = JSON.parse(said);
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
