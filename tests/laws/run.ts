import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { type LawsRun, readTried } from './tried.ts';

/**
 * `npm run laws`: every law of the arithmetic, of the garment and of what is drawn with a fresh seed and at least
 * 100,000 cases. `SEED=n CASES=n`, `MINUTES=n` for one law at most (what falls short is said),
 * `ONLY="tests/drawing tests/sewing/hems/hem"` for other files. A run that was stopped goes on when
 * it is given its seed: laws that held with it are not tried again. After a change of the code
 * take a fresh one.
 */
const {
  SEED,
  CASES = '100000',
  MINUTES,
  ONLY = 'tests/lengths tests/sewing tests/garment tests/calculations/drawings.test.ts tests/calculations/figure-labels.test.ts',
} = process.env;
const seed = SEED ? Number(SEED) : Math.floor(Math.random() * 2 ** 31);
const run: LawsRun = {
  seed,
  cases: Number(CASES),
  ...(MINUTES ? { minutes: Number(MINUTES) } : {}),
  report: join('node_modules', '.cache', 'laws', `${seed}-${CASES}.jsonl`),
};
console.log(`to go on where this was stopped, or to try the same again: SEED=${seed} npm run laws`);
const files = ONLY.split(' ');
const vitest = join('node_modules', 'vitest', 'vitest.mjs');
const projects = ['unit', 'dom', 'apart'].flatMap((name) => ['--project', name]);
const args = [vitest, 'run', ...projects, ...files];
const { status } = spawnSync(process.execPath, [...args, '--reporter=dot'], {
  stdio: 'inherit',
  env: { ...process.env, LAWS: JSON.stringify(run) },
});
const tried = readTried(run.report).sort((a, b) => a.law.localeCompare(b.law));

for (const { law, cases, seconds, short } of tried) {
  console.log(
    `${String(cases).padStart(9)}  ${seconds.toFixed(1).padStart(7)} s  ${law}${short ? '  (short: time limit)' : ''}`,
  );
}
const short = tried.filter((one) => one.short).length;
console.log(
  `${tried.length} laws held, ${short} of them with fewer than ${run.cases} cases; seed ${run.seed}`,
);
process.exitCode = status ?? 1;
