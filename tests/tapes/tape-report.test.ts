import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inGate } from '../thorough.ts';
import { toPng } from './picture-files.ts';
import { scene } from './scene.ts';
import { reportOf } from './tape-report.ts';

const drawn = scene('cm tape on cloth', 3);
const PLACES = [
  { x: 5, y: 6 },
  { x: 900, y: 700 },
];

describe('what is reported of a file', () => {
  test('a reader that fails is not taken for a picture that can’t be decoded', async () => {
    const { failed, report } = await reportOf('a.png', PLACES, {
      open: async () => drawn,
      readPage: () => Promise.reject(new Error('out of memory')),
    });
    expect(failed).toBe(true);
    expect(report).toEqual({
      file: 'a.png',
      width: drawn.width,
      height: drawn.height,
      outcome: 'cannot',
      reason: 'the reader failed: out of memory',
      question: null,
      scales: [],
      readings: PLACES.map((place) => ({ ...place, reason: 'nothing-read' })),
    });
  });

  test('a picture that can’t be decoded is said to be one', async () => {
    const open = () => Promise.reject(new Error('no such kind'));
    const { failed, report } = await reportOf('a.txt', [], { open, readPage: async () => [] });
    expect(failed).toBe(true);
    expect(report.reason).toBe('not a picture that can be decoded: no such kind');
  });
});

describe('npm run read-tape', () => {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), 'read-tape-'));
  beforeAll(() => writeFileSync(join(folder, 'tape.png'), toPng(drawn)));
  afterAll(() => rmSync(folder, { recursive: true }));

  /** Runs it as npm does: in the project's folder, told where it was called from. */
  function run(...given: string[]): Promise<{ code: number; out: string; err: string }> {
    const args = ['.ci/ts.mjs', 'tests/tapes/read-tape.ts', ...given];
    const env = { ...process.env, INIT_CWD: folder };
    return new Promise((done) => {
      const child = execFile(process.execPath, args, { cwd: root, env }, (_, out, err) =>
        done({ code: child.exitCode ?? -1, out, err }),
      );
    });
  }

  // The form is the one that the tape's issue gives.
  test('reads a file named from where it was called, and prints the form and no more', async () => {
    const at = drawn.points.find(({ onScale }) => onScale) ?? { x: 0, y: 0, mm: 0 };
    const { code, out } = await run('--at', `${at.x - 0.5},${at.y - 0.5}`, '--at=0,0', 'tape.png');
    const report = JSON.parse(out);
    expect(code).toBe(0);
    expect(Object.keys(report)).toEqual([
      ...['file', 'width', 'height', 'outcome', 'reason', 'question', 'scales', 'readings'],
    ]);
    expect(report).toMatchObject({ file: 'tape.png', width: drawn.width, outcome: 'read' });
    for (const scale of report.scales) {
      expect(Object.keys(scale)).toEqual(['unit', 'numbers']);
      for (const one of scale.numbers) expect(Object.keys(one)).toEqual(['value', 'x', 'y']);
    }
    expect(report.scales[0].numbers.length).toBeGreaterThan(3);
    const [first, second] = report.readings;
    expect(Object.keys(first)).toEqual(['x', 'y', 'value', 'unit', 'mm', 'uncertaintyMm']);
    expect(Math.abs(first.mm - at.mm)).toBeLessThan(0.5);
    expect(Object.keys(second)).toEqual(['x', 'y', 'reason']);
  });

  test('a file that is not there is said, in the same form', async () => {
    const { code, out } = await run('nowhere.png');
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ file: 'nowhere.png', outcome: 'cannot', scales: [] });
  });

  const UNKNOWN = ['--places', '-v', '--at,1,2'];
  test.each(inGate(UNKNOWN, (_, i) => i === 0))(
    '%s is no file but an unknown option',
    async (one) => {
      const { code, out, err } = await run(one, 'tape.png');
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err).toContain(`unknown option: ${one}`);
      expect(err).toContain('usage:');
    },
  );
});
