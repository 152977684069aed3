import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { LawsRun, LawTried } from './fast-check.ts';

/**
 * `npm run laws`: every law of the arithmetic and of the garment with a fresh seed and at least
 * 100,000 cases. `SEED=n CASES=n`, `MINUTES=n` for one law at most (what falls short is said),
 * `ONLY="tests/drawing tests/sewing/hem"` for other files.
 */
const {
  SEED,
  CASES = '100000',
  MINUTES,
  ONLY = 'tests/lengths tests/sewing tests/garment',
} = process.env;
const folder = mkdtempSync(join(tmpdir(), 'thumbrule-laws-'));
const run: LawsRun = {
  seed: SEED ? Number(SEED) : Math.floor(Math.random() * 2 ** 31),
  cases: Number(CASES),
  ...(MINUTES ? { minutes: Number(MINUTES) } : {}),
  report: join(folder, 'laws'),
};
const files = ONLY.split(' ');
const vitest = join('node_modules', 'vitest', 'vitest.mjs');
const args = [vitest, 'run', '--project', 'unit', '--project', 'dom', ...files];
const { status } = spawnSync(process.execPath, [...args, '--reporter=dot'], {
  stdio: 'inherit',
  env: { ...process.env, LAWS: JSON.stringify(run) },
});
const tried = readTried(run.report);
rmSync(folder, { recursive: true });

for (const { law, cases, seconds, short } of tried) {
  console.log(
    `${String(cases).padStart(9)}  ${seconds.toFixed(1).padStart(7)} s  ${law}${short ? '  (short: time limit)' : ''}`,
  );
}
const short = tried.filter((one) => one.short).length;
console.log(
  `${tried.length} laws held, ${short} of them with fewer than ${run.cases} cases; to try the same again: SEED=${run.seed} npm run laws`,
);
process.exitCode = status ?? 1;

function readTried(report: string): LawTried[] {
  if (!existsSync(report)) return [];
  const lines = readFileSync(report, 'utf8').trim().split('\n');
  return lines
    .map((line) => JSON.parse(line) as LawTried)
    .sort((a, b) => a.law.localeCompare(b.law));
}
