// npm run -s read-tape -- [--at x,y]… FILE…   One line of JSON for each file.
import { resolve } from 'node:path';
import type { Point } from '../../src/tape/picture/place.ts';
import { nodeEngine } from './node-engine.ts';
import { greyOfFile } from './photo-file.ts';
import { reportOf } from './tape-report.ts';

const USAGE = 'usage: npm run -s read-tape -- [--at x,y]… FILE…';

/** Where the command was given: npm goes to the project's folder and says where it came from. */
const FOLDER = process.env.INIT_CWD ?? process.cwd();

function argumentsGiven(): { at: Point[]; files: string[] } {
  const at: Point[] = [];
  const files: string[] = [];
  // What comes before is Node, its runner and this file.
  const given = process.argv.slice(
    process.argv.findIndex((one) => one.endsWith('read-tape.ts')) + 1,
  );
  while (given.length > 0) {
    const one = given.shift() ?? '';
    if (one === '--at' || one.startsWith('--at=')) {
      at.push(placeOf(one === '--at' ? given.shift() : one.slice('--at='.length)));
    } else if (one.startsWith('-')) {
      stop(`unknown option: ${one} (a file of that name is ./${one})\n${USAGE}`);
    } else {
      files.push(one);
    }
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

const { at, files } = argumentsGiven();
const engine = await nodeEngine().catch((error: unknown) =>
  stop(`the character reader does not start: ${error instanceof Error ? error.message : error}`),
);
const open = (file: string) => greyOfFile(resolve(FOLDER, file));
let faults = 0;
for (const file of files) {
  const { failed, report } = await reportOf(file, at, { open, readPage: engine.readPage });
  if (failed) faults += 1;
  console.log(JSON.stringify(report));
}
await engine.close();
process.exit(faults > 0 ? 1 : 0);
