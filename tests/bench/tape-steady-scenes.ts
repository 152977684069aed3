import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import type { nodeEngine } from '../tapes/node-engine.ts';
import { type Scene, sceneList } from '../tapes/scene.ts';
import { otherWays } from './plain-ways.ts';
import { WRONG_MM } from './tape-scenes.ts';

type Engine = Pick<Awaited<ReturnType<typeof nodeEngine>>, 'readPage'>;

/**
 * Reads drawn scenes as they are and in each other way, and prints which outcomes differ, and how many
 * stay. Scenes that show no scale are left out: they only can be refused.
 */
export async function readScenesSteadily(
  count: number,
  seed: number,
  kind: string,
  engine: Engine,
): Promise<void> {
  const byWay = new Map<string, { all: number; same: number }>();
  let wrong = 0;
  for (const { kind: own, seed: number, make } of sceneList(count, seed)) {
    if (!own.startsWith(kind)) continue;
    const scene = make();
    if (scene.truth.expect === 'ask-or-cannot') continue;
    const plain = await readTape(scene, engine.readPage);
    const said: string[] = [];
    for (const { how, image, moved } of otherWays(scene)) {
      const reading = await readTape(image, engine.readPage);
      const way = byWay.get(how) ?? { all: 0, same: 0 };
      byWay.set(how, way);
      way.all++;
      if (reading.outcome === plain.outcome) way.same++;
      else
        said.push(`${how}: ${reading.outcome} ${reading.reason ?? reading.question?.kind ?? ''}`);
      const off = wrongPlaces(scene, (place) => readingAt(reading, moved(place)));
      if (off > 0) said.push(`${how}: WRONG at ${off}`);
      wrong += off;
    }
    const first = `${plain.outcome} ${plain.reason ?? plain.question?.kind ?? ''}`;
    console.log(
      `${own} ${number}`.padEnd(36),
      first,
      said.length > 0 ? `| ${said.join(' | ')}` : '',
    );
  }
  for (const [how, { all, same }] of byWay)
    console.log(`${how.padEnd(18)} same outcome ${same}/${all}`);
  console.log(`told wrong: ${wrong}`);
}

/** How many places of its scales are told wrong. */
function wrongPlaces(
  { points }: Scene,
  tellAt: (place: { x: number; y: number }) => ReturnType<typeof readingAt>,
): number {
  return points.filter(({ x, y, mm, onScale }) => {
    if (!onScale) return false;
    // Scenes count from the corner of the first pixel, the reader from its middle.
    const told = tellAt({ x: x - 0.5, y: y - 0.5 });
    return told.ok && Math.abs(told.mm - mm) > WRONG_MM;
  }).length;
}
