import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mmPerUnit } from '../../src/tape/graduations/tape-unit.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import type { nodeEngine } from '../tapes/node-engine.ts';
import { greyOfFile } from '../tapes/photo-file.ts';
import { plainWays } from './plain-ways.ts';
import type { Photo } from './tape-photos.ts';
import { WRONG_MM } from './tape-scenes.ts';

/**
 * Reads every photo as it is and in each plain way, and prints whether the outcome stays, and what
 * is told at its marks to within what is stated. Nothing is written down.
 */
export async function readSteadily(
  folder: string,
  engine: Awaited<ReturnType<typeof nodeEngine>>,
  only: string,
): Promise<void> {
  if (!existsSync(join(folder, 'index.json'))) return console.log(`no photos in ${folder}`);
  const { photos } = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as {
    photos: Photo[];
  };
  const byWay = new Map<string, { all: number; outcome: number; agreed: number; told: number }>();
  let wrong = 0;
  for (const { file, marks = [] } of photos) {
    if (!only.split(',').some((start) => file.startsWith(start))) continue;
    const photo = await greyOfFile(join(folder, file));
    const plain = await readTape(photo, engine.readPage);
    const said: string[] = [];
    for (const { how, image, moved } of plainWays(photo)) {
      const reading = await readTape(image, engine.readPage);
      const way = byWay.get(how) ?? { all: 0, outcome: 0, agreed: 0, told: 0 };
      byWay.set(how, way);
      way.all++;
      const isSame = reading.outcome === plain.outcome;
      if (isSame) way.outcome++;
      let [agreed, both] = [0, 0];
      for (const mark of marks) {
        const now = readingAt(reading, moved(mark));
        if (!now.ok) continue;
        if (Math.abs(now.mm - mark.value * mmPerUnit[mark.unit]) > WRONG_MM) wrong++;
        const before = readingAt(plain, mark);
        if (!before.ok) continue;
        both++;
        // Both are off by what is stated at most, in the same direction or not.
        if (Math.abs(now.mm - before.mm) <= now.uncertaintyMm + before.uncertaintyMm) agreed++;
      }
      way.told += both;
      way.agreed += agreed;
      said.push(`${how}: ${reading.outcome}${isSame ? '' : ' (!)'} ${agreed}/${both}`);
    }
    console.log(`${file.slice(0, 26).padEnd(26)} ${plain.outcome} | ${said.join(' | ')}`);
  }
  for (const [how, { all, outcome, agreed, told }] of byWay)
    console.log(
      `${how.padEnd(18)} same outcome ${outcome}/${all}, same readings ${agreed}/${told}`,
    );
  console.log(`told wrong: ${wrong}`);
}
