import { digitReader } from '../../../src/tape/digits/digit-logs.ts';
import { SURE } from '../../../src/tape/digits/limits.ts';
import { unpackLayers } from '../../../src/tape/digits/packed-layers.ts';
import { WEIGHTS } from '../../../src/tape/digits/weights.ts';
import { answersOf, cellsOf, figuresOf, isDigit, said } from './figures.ts';
import { printed } from './letter-masks.ts';
import { rubbishAside } from './rubbish-aside.ts';
import { keptAside } from './typefaces.ts';

const CELLS = Number(process.env.CELLS ?? 8000);
const SEED = Number(process.env.SEED ?? 77);

const layers = unpackLayers(WEIGHTS);
const digits = keptAside.flatMap((face, i) => {
  const each = Math.ceil(CELLS / keptAside.length);
  const own = answersOf(layers, cellsOf(printed([face]), rubbishAside, 0, each, SEED + i));
  console.log(said(face.name, figuresOf(own, SURE)));
  return own;
});
console.log(said('all digits kept aside', figuresOf(digits, SURE)));
const rubbish = rubbishAside.flatMap((one, i) => {
  const each = Math.ceil(CELLS / 4 / rubbishAside.length);
  const own = answersOf(layers, cellsOf(printed(keptAside), [one], 1, each, SEED + 100 + i));
  console.log(said(one.name || `rubbish ${i}`, figuresOf(own, SURE)));
  return own;
});
console.log(said('all rubbish kept aside', figuresOf(rubbish, SURE)));
const reader = digitReader();
const cells = cellsOf(printed(keptAside), rubbishAside, 0, 1000, SEED).map(({ cell }) => cell);
const from = performance.now();
for (const cell of cells) reader.shares(cell);
console.log(`${((performance.now() - from) / cells.length).toFixed(2)} ms a digit`);
const all = [...digits, ...rubbish];
console.log(said('all', figuresOf(all, SURE)));
const confused = new Map<string, number>();
for (const { label, best, share } of all) {
  if (best === label) continue;
  const what = `${isDigit({ label, best, share }) ? label : 'rubbish'} as ${best < 10 ? best : 'none'}`;
  confused.set(what, (confused.get(what) ?? 0) + 1);
}
console.log([...confused].sort(([, a], [, b]) => b - a).slice(0, 15));
console.log(
  'surest wrong',
  all
    .filter(({ best, label }) => best !== label)
    .sort((a, b) => b.share - a.share)
    .slice(0, 8),
);
