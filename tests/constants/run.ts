import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Constant, constantsIn, movedValue, withMoved } from './moved.ts';

/**
 * `npm run constants`: every number in the limits of the tape reader's rooms moved by a third, one at a
 * time, up and then down, until a test fails. `ROOM=pitch` for one room, `ONLY=NAME` for constants whose
 * name begins so, `TESTS="tests/tape"` for other tests than those of the room itself and then of all the
 * reader. Nine of ten must be noticed; those that weren't are the last lines.
 */
const { ROOM, ONLY = '', TESTS = 'tests/tape tests/tapes tests/workers' } = process.env;
const ROOMS = 'src/tape';
const folder = mkdtempSync(join(tmpdir(), 'constants-'));

const rooms = readdirSync(ROOMS)
  .filter((room) => !ROOM || room === ROOM)
  .filter((room) => existsSync(join(ROOMS, room, 'limits.ts')));
const unnoticed: string[] = [];
let tried = 0;
for (const room of rooms) {
  const file = join(ROOMS, room, 'limits.ts');
  const tests = [[`tests/tape/${room}/`], TESTS.split(' ')].filter(([first = '']) =>
    existsSync(first),
  );
  for (const files of tests) {
    const failed = failedIn(files);
    if (failed) throw new Error(`before anything is moved: ${failed}`);
  }
  for (const constant of constantsIn(file).filter(({ name }) => name.startsWith(ONLY))) {
    tried++;
    const found = noticedBy(constant, tests);
    const said = `${room} ${constant.name} ${constant.value}`;
    if (!found) unnoticed.push(said);
    console.log(`${said}: ${found ?? 'UNNOTICED'}`);
  }
}
rmSync(folder, { recursive: true });
const share = 1 - unnoticed.length / Math.max(1, tried);
console.log(`${tried} moved, ${(100 * share).toFixed(1)} % noticed; not:\n${unnoticed.join('\n')}`);
process.exitCode = share >= 0.9 ? 0 : 1;

/** The first test that fails with the constant moved, and how it was moved. */
function noticedBy(constant: Constant, tests: readonly string[][]): string | undefined {
  for (const files of tests) {
    for (const sign of [1, -1] as const) {
      const failed = failedIn(files, constant, sign);
      if (failed) return `→ ${movedValue(constant.value, sign).toPrecision(3)}, ${failed}`;
    }
  }
  return undefined;
}

/** The first test of these files that fails, if one does. */
function failedIn(
  files: readonly string[],
  constant?: Constant,
  sign: 1 | -1 = 1,
): string | undefined {
  const [text, report] = [join(folder, 'limits.ts'), join(folder, 'report.json')];
  if (constant) writeFileSync(text, withMoved(constant, sign));
  rmSync(report, { force: true });
  const vitest = join('node_modules', 'vitest', 'vitest.mjs');
  const config = ['--config', 'tests/constants/vitest.config.ts'];
  const reporter = ['--reporter=json', `--outputFile=${report}`];
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', ...config, ...reporter, ...files],
    {
      stdio: 'ignore',
      env: { ...process.env, ...(constant ? { MOVED: constant.file, MOVED_TEXT: text } : {}) },
    },
  );
  if (status === 0) return undefined;
  if (!existsSync(report)) return 'no test can run';
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as {
    testResults: { assertionResults: { status: string; fullName: string }[]; message: string }[];
  };
  const failed = testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .find((one) => one.status === 'failed');
  return (
    failed?.fullName ?? testResults.find(({ message }) => message)?.message ?? 'no test passes'
  );
}
