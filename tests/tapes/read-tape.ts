// npm run -s read-tape -- [--at x,y]… FILE…   One line of JSON for each file.
import { readingAt, type TapeReading } from '../../src/tape/read-at.ts';
import { readTape } from '../../src/tape/read-tape.ts';
import type { Point } from '../../src/tape/reading.ts';
import { nodeEngine } from './node-engine.ts';
import { greyOfFile } from './photo-file.ts';

const USAGE = 'usage: npm run -s read-tape -- [--at x,y]… FILE…';

function argumentsGiven(): { at: Point[]; files: string[] } {
  const at: Point[] = [];
  const files: string[] = [];
  // What comes before is Node, its runner and this file.
  const given = process.argv.slice(
    process.argv.findIndex((one) => one.endsWith('read-tape.ts')) + 1,
  );
  while (given.length > 0) {
    const one = given.shift() ?? '';
    if (one !== '--at' && !one.startsWith('--at=')) files.push(one);
    else at.push(placeOf(one === '--at' ? given.shift() : one.slice('--at='.length)));
  }
  if (files.length === 0) stop(`no picture named\n${USAGE}`);
  return { at, files };
}

function placeOf(text = ''): Point {
  const [x, y, more] = text
    .split(',')
    .map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  if (x === undefined || y === undefined || more !== undefined || !Number.isFinite(x + y)) {
    stop(`not a place: ${text} (wanted two numbers, such as --at 120,45)\n${USAGE}`);
  }
  return { x, y };
}

function stop(words: string): never {
  console.error(words);
  process.exit(2);
}

function shown(file: string, reading: TapeReading, at: readonly Point[]) {
  const { width, height, outcome, reason, question, scales } = reading;
  return {
    file,
    width,
    height,
    outcome,
    reason: reason ?? null,
    question: question ?? null,
    scales: scales.map(({ unit, sure, numbers }) => ({ unit, sure, numbers })),
    readings: at.map(({ x, y }) => {
      const told = readingAt(reading, x, y);
      if (!told.ok) return { x, y, reason: told.reason };
      const { value, unit, mm, uncertaintyMm } = told;
      return { x, y, value, unit, mm, uncertaintyMm };
    }),
  };
}

const { at, files } = argumentsGiven();
const engine = await nodeEngine();
let failed = false;
for (const file of files) {
  try {
    const image = await greyOfFile(file);
    console.log(JSON.stringify(shown(file, await readTape(image, engine.readPage), at)));
  } catch (error) {
    failed = true;
    const reason = `not a picture that can be decoded: ${error instanceof Error ? error.message : error}`;
    const readings = at.map((place) => ({ ...place, reason: 'nothing-read' }));
    console.log(
      JSON.stringify({
        file,
        width: 0,
        height: 0,
        outcome: 'cannot',
        reason,
        question: null,
        scales: [],
        readings,
      }),
    );
  }
}
await engine.close();
process.exit(failed ? 1 : 0);
