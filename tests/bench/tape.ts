// npm run bench:tape     SCENES=600 SEED=1 KIND=cm PHOTO=03 PHOTOS=folder WAYS=30 (or plain, or drawn) OUT=folder
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { nodeEngine } from '../tapes/node-engine.ts';
import { readPhotos } from './tape-photos.ts';
import { writePlots } from './tape-plots.ts';
import { reportOf } from './tape-report.ts';
import { readScenes } from './tape-scenes.ts';
import { readSteadily } from './tape-steady.ts';
import { readScenesSteadily } from './tape-steady-scenes.ts';
import { readVaried } from './tape-varied.ts';

const { PHOTO, PHOTOS = '../shared/photos', SCENES, SEED = '1', KIND = '', WAYS } = process.env;
const folder = process.env.OUT ?? join(tmpdir(), 'bench-tape');
const engine = await nodeEngine();
// Either part can be asked for alone; without a wish both run.
const onlyScenes = SCENES !== undefined || KIND !== '';
if (WAYS === 'plain') {
  await readSteadily(PHOTOS, engine, PHOTO ?? '');
} else if (WAYS === 'drawn') {
  await readScenesSteadily(Number(SCENES ?? 49), Number(SEED), KIND, engine);
} else if (WAYS !== undefined) {
  await readVaried(PHOTOS, engine, PHOTO ?? '', Number(WAYS), Number(SEED));
} else if (!onlyScenes || PHOTO !== undefined) {
  await readPhotos(PHOTOS, engine, PHOTO);
}
if (PHOTO === undefined && WAYS === undefined) {
  const outcomes = await readScenes(Number(SCENES ?? 600), Number(SEED), KIND, engine, folder);
  console.log(reportOf(outcomes));
  for (const file of writePlots(outcomes, folder, Number(SEED))) console.log(`drawn: ${file}`);
  console.log(`every scene by itself: ${folder}`);
}
await engine.close();
