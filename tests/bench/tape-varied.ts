import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mmPerUnit } from '../../src/tape/graduations/tape-unit.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import type { nodeEngine } from '../tapes/node-engine.ts';
import { greyOfFile } from '../tapes/photo-file.ts';
import { randomFrom, seedFor } from '../tapes/random.ts';
import type { Photo } from './tape-photos.ts';
import { WRONG_MM } from './tape-scenes.ts';
import { varied } from './vary-photo.ts';

/**
 * Reads every photo in many other ways (turned, cut, tilted, badly lit), and prints what was told
 * wrong: real print and cloth are few, and each may be seen from anywhere. Nothing is written down.
 */
export async function readVaried(
  folder: string,
  engine: Awaited<ReturnType<typeof nodeEngine>>,
  only: string,
  ways: number,
  seed: number,
): Promise<void> {
  if (!existsSync(join(folder, 'index.json'))) return console.log(`no photos in ${folder}`);
  const { photos } = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as {
    photos: Photo[];
  };
  let wrongWays = 0;
  let all = 0;
  for (const { file, marks = [], precision_px: precision = 1 } of photos) {
    if (!file.startsWith(only)) continue;
    const photo = await greyOfFile(join(folder, file));
    const outcomes: Record<string, number> = {};
    let told = 0;
    let asked = 0;
    for (let way = 0; way < ways; way++) {
      const { image, how, moved } = varied(photo, randomFrom(seedFor(file, seed * 1000 + way)));
      const reading = await readTape(image, engine.readPage);
      all++;
      outcomes[reading.outcome] = (outcomes[reading.outcome] ?? 0) + 1;
      const seen = marks
        .map((mark) => ({ mark, at: moved(mark) }))
        .filter(({ at }) => at.x >= 0 && at.y >= 0 && at.x < image.width && at.y < image.height);
      asked += seen.length;
      const offs = seen.flatMap(({ mark, at }) => {
        const one = readingAt(reading, at);
        return one.ok ? [one.mm - mark.value * mmPerUnit[mark.unit]] : [];
      });
      told += offs.length;
      const wrong = offs.filter((mm) => Math.abs(mm) > WRONG_MM + precision * 0.2);
      if (wrong.length > 0 || (marks.length === 0 && reading.outcome === 'read')) {
        if (wrong.length > 0) wrongWays++;
        console.log(
          `  ${file.slice(0, 3)} way ${way}: ${wrong.length} of ${offs.length} wrong ${wrong.map((mm) => mm.toFixed(1)).join(' ')} | ${reading.scales.map((s) => `${s.unit}${s.sure ? '' : `?${s.doubts}`}[${s.numbers.map(({ value }) => value).join(',')}]`).join(' ')} | ${how}`,
        );
      }
    }
    console.log(
      `${file.slice(0, 30).padEnd(30)} ${JSON.stringify(outcomes)} places ${told}/${asked}`,
    );
  }
  console.log(`seen ${all} ways: ${wrongWays} with a place told wrong`);
}
