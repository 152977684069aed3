import { writeFileSync } from 'node:fs';
import { SURE } from '../../../src/tape/digits/limits.ts';
import { unpackLayers } from '../../../src/tape/digits/packed-layers.ts';
import { randomFrom } from '../../tapes/random.ts';
import { gatheredCrew } from './crew.ts';
import { answersOf, cellsOf, figuresOf, isDigit, said } from './figures.ts';
import { copyLayers, freshLayers, stepper, takeSlopes, zeroLayers } from './learning.ts';
import { packLayers, roundLayers } from './packing.ts';
import { settled } from './settle.ts';
import { emptyShelf } from './shelf.ts';
import { SHARE_OF_RUBBISH, settlingSource } from './source.ts';

const SEED = Number(process.env.SEED ?? 1);
const CELLS = Number(process.env.CELLS ?? 300_000);
const ROUNDS = Number(process.env.ROUNDS ?? 5);
const ASIDE = Number(process.env.ASIDE ?? 20_000);
const BATCH = 128;
const FASTEST = 0.004;
/** Weights are rounded as they will be packed in this last part of training, so that the rest makes up for it. */
const ROUNDED_FROM = 0.7;

const FILE = process.env.OUT ?? 'src/tape/digits/weights.ts';
const HEAD = `/** Made by \`npm run train:digits\`; how it is laid out stands in packed-layers.ts. */
export const WEIGHTS =
`;

const random = randomFrom(SEED);
const started = performance.now();
const say = (done: number, what: string) => {
  const seconds = ((performance.now() - started) / 1000).toFixed(0);
  console.log(`${(100 * done).toFixed(0)} % ${what}, ${seconds} s`);
};

const shelf = emptyShelf(CELLS);
const crew = gatheredCrew(SEED, shelf);
await crew.fill((done) => {
  if (done % 50_000 === 0) say(done / CELLS, 'drawn');
});

const layers = freshLayers(random);
const [slopes, rounded] = [zeroLayers(), zeroLayers()];
const step = stepper(layers);
const steps = Math.floor((CELLS * ROUNDS) / BATCH);
for (let at = 0; at < steps; at++) {
  const done = at / steps;
  if (done > ROUNDED_FROM) roundLayers(layers, crew.layers);
  else copyLayers(layers, crew.layers);
  await crew.learn(Array.from({ length: BATCH }, () => random.whole(0, CELLS - 1)));
  for (const own of crew.slopes) takeSlopes(own, slopes);
  step(slopes, FASTEST * Math.min(1, at / 300) * (0.5 + 0.5 * Math.cos(Math.PI * done)), BATCH);
  if (at % 500 === 0) say(done, 'learnt');
}
await crew.dismiss();

const aside = cellsOf(settlingSource(), ASIDE, SEED + 1);
roundLayers(layers, rounded);
const { layers: whole, temperature } = settled(rounded, aside, SHARE_OF_RUBBISH);
const packed = packLayers(whole);
writeFileSync(FILE, `${HEAD}  '${packed}';\n`);
say(1, `done, temperature ${temperature.toFixed(2)}, ${packed.length} letters`);
const answers = answersOf(unpackLayers(packed), aside);
for (const sure of [0, 0.9, 0.97, 0.99, 0.995, 0.998, 0.999, SURE]) {
  const [digits, others] = [answers.filter(isDigit), answers.filter((one) => !isDigit(one))];
  console.log(said(`settled on, digits, at ${sure}`, figuresOf(digits, sure)));
  console.log(said(`settled on, rubbish, at ${sure}`, figuresOf(others, sure)));
}
