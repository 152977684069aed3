import { writeFileSync } from 'node:fs';
import { SURE } from '../../../src/tape/digits/limits.ts';
import { unpackLayers } from '../../../src/tape/digits/packed-layers.ts';
import { randomFrom } from '../../tapes/random.ts';
import { drawnCell, type LabelledCell } from './cells.ts';
import { answersOf, cellsOf, figuresOf, isDigit, said } from './figures.ts';
import { freshLayers, slopeMaker, stepper, zeroLayers } from './learning.ts';
import { printed, stroked } from './letter-masks.ts';
import { packLayers } from './packing.ts';
import { trainedRubbish } from './rubbish.ts';
import { settled } from './settle.ts';
import { settling, trained } from './typefaces.ts';

const SEED = Number(process.env.SEED ?? 1);
const CELLS = Number(process.env.CELLS ?? 60_000);
const ROUNDS = Number(process.env.ROUNDS ?? 5);
const SHARE_OF_RUBBISH = 0.3;
const BATCH = 32;
const FASTEST = 0.002;

const FILE = process.env.OUT ?? 'src/tape/digits/weights.ts';
const HEAD = `/** Made by \`npm run train:digits\`; how it is laid out stands in packed-layers.ts. */
export const WEIGHTS =
`;

const random = randomFrom(SEED);
const letters = [...printed(trained), ...stroked(random, 24)];
const started = performance.now();
const since = () => `${((performance.now() - started) / 1000).toFixed(0)} s`;
const cells: LabelledCell[] = Array.from({ length: CELLS }, () =>
  drawnCell(letters, trainedRubbish, SHARE_OF_RUBBISH, random),
);
console.log(`${CELLS} cells drawn, ${since()}`);

const layers = freshLayers(random);
const slopes = zeroLayers();
const addSlope = slopeMaker();
const step = stepper(layers);
const steps = Math.floor((CELLS * ROUNDS) / BATCH);
for (let at = 0; at < steps; at++) {
  for (let i = 0; i < BATCH; i++) addSlope(layers, random.pick(cells), slopes);
  const done = at / steps;
  step(slopes, FASTEST * Math.min(1, at / 200) * (0.5 + 0.5 * Math.cos(Math.PI * done)), BATCH);
  if (at % 3000 === 0) console.log(`${(100 * done).toFixed(0)} %, ${since()}`);
}

const aside = cellsOf(
  printed(settling),
  trainedRubbish,
  SHARE_OF_RUBBISH,
  Number(process.env.ASIDE ?? 12_000),
  SEED + 1,
);
const { layers: whole, temperature } = settled(layers, aside, SHARE_OF_RUBBISH);
const packed = packLayers(whole);
writeFileSync(FILE, `${HEAD}  '${packed}';\n`);
console.log(`temperature ${temperature.toFixed(2)}, ${packed.length} letters, ${since()}`);
const answers = answersOf(unpackLayers(packed), aside);
for (const sure of [0, 0.9, 0.97, 0.99, 0.995, 0.998, 0.999, SURE]) {
  console.log(said(`settled on, digits, at ${sure}`, figuresOf(answers.filter(isDigit), sure)));
  console.log(
    said(
      `settled on, rubbish, at ${sure}`,
      figuresOf(
        answers.filter((one) => !isDigit(one)),
        sure,
      ),
    ),
  );
}
