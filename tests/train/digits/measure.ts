import { writeFileSync } from 'node:fs';
import { digitReader } from '../../../src/tape/digits/digit-logs.ts';
import { SURE } from '../../../src/tape/digits/limits.ts';
import { unpackLayers } from '../../../src/tape/digits/packed-layers.ts';
import { WEIGHTS } from '../../../src/tape/digits/weights.ts';
import type { Source } from './cells.ts';
import { type Answer, answersOf, cellsOf, figuresOf, isDigit, said } from './figures.ts';
import { printed } from './letter-masks.ts';
import { trainedRubbish } from './rubbish.ts';
import { rubbishAside } from './rubbish-aside.ts';
import { sheetOf } from './sheet.ts';
import { keptAside, settling } from './typefaces.ts';

const { CELLS = '8000', SEED = '77', OUT, ON = 'aside' } = process.env;
const seed = Number(SEED);
const layers = unpackLayers(WEIGHTS);
/** What is to be mended is looked for on what was settled on, so that what was kept aside stays unseen. */
const [faces, kinds] = ON === 'settling' ? [settling, trainedRubbish] : [keptAside, rubbishAside];

const letters = printed(faces);
const drawn = (source: Partial<Source>, count: number, own: number) => {
  const whole = { digits: letters, letters, rubbish: kinds, shareOfRubbish: 0, ...source };
  const cells = cellsOf(whole, count, seed + own);
  return answersOf(layers, cells).map((answer, i) => ({ ...answer, ...cells[i] }) as Seen);
};
type Seen = Answer & ReturnType<typeof cellsOf>[number];

const digits = faces.flatMap((face, i) => {
  const each = Math.ceil(Number(CELLS) / faces.length);
  const own = drawn({ digits: printed([face]) }, each, i);
  console.log(said(face.name, figuresOf(own, SURE)));
  return own;
});
const rubbish = kinds.flatMap((kind, i) => {
  const each = Math.ceil(Number(CELLS) / 4 / kinds.length);
  const own = drawn({ rubbish: [kind], shareOfRubbish: 1 }, each, 100 + i);
  console.log(said(kind.name, figuresOf(own, SURE)));
  return own;
});
const all = [...digits, ...rubbish];
console.log(said('all digits', figuresOf(digits, SURE)));
console.log(said('all rubbish', figuresOf(rubbish, SURE)));
console.log(said('all', figuresOf(all, SURE)));
const taken = rubbish.filter(({ best, share }) => best < 10 && share >= SURE).length;
console.log(`rubbish surely taken for a digit: ${taken} of ${rubbish.length}`);

const wrong = all.filter(({ best, label }) => best !== label);
for (const [name, of] of Object.entries({
  'height of the digit, px': ({ view }: Seen) => view.tall,
  'blur, of the height': ({ view }: Seen) => view.blur / view.tall,
  noise: ({ view }: Seen) => view.noise,
  contrast: ({ view }: Seen) => view.contrast,
  'turned and slanted, degrees': ({ view }: Seen) => Math.abs(view.turn + 57 * view.shear),
  'edges off, of the height': ({ view }: Seen) => Math.max(...view.offs.map(Math.abs)) / view.tall,
  'cut out along its ink': ({ view }: Seen) => Number(view.cleaned),
})) {
  console.log(`wrong of digits by ${name}: ${byFifths(digits, of)}`);
}
const confused = new Map<string, number>();
for (const one of wrong) {
  const what = `${isDigit(one) ? one.label : 'rubbish'} as ${one.best < 10 ? one.best : 'none'}`;
  confused.set(what, (confused.get(what) ?? 0) + 1);
}
console.log([...confused].sort(([, a], [, b]) => b - a).slice(0, 20));

const reader = digitReader();
const timed = digits.slice(0, 1000).map(({ cell }) => cell);
const from = performance.now();
for (const cell of timed) reader.shares(cell);
console.log(`${((performance.now() - from) / timed.length).toFixed(2)} ms a digit`);
if (OUT) {
  const name = ({ label, best, share }: Seen) =>
    `${isDigit({ label, best, share }) ? label : 'n'}>${best < 10 ? best : 'n'} ${share.toFixed(3)}`;
  wrong.sort((one, other) => other.share - one.share);
  writeFileSync(
    OUT,
    sheetOf(wrong.slice(0, 300).map((one) => ({ cell: one.cell, under: name(one) }))),
  );
  console.log(`${Math.min(300, wrong.length)} wrong ones drawn, the surest first: ${OUT}`);
}

/** Wrong in each fifth of the cells, by a figure of theirs, with where the fifth begins. */
function byFifths(cells: readonly Seen[], of: (one: Seen) => number): string {
  const sorted = [...cells].sort((one, other) => of(one) - of(other));
  return Array.from({ length: 5 }, (_, i) => {
    const part = sorted.slice((i * sorted.length) / 5, ((i + 1) * sorted.length) / 5);
    const off = part.filter(({ best, label }) => best !== label).length;
    const start = part[0] ? of(part[0]).toFixed(2) : '';
    return `${((100 * off) / Math.max(1, part.length)).toFixed(2)} % (from ${start})`;
  }).join(', ');
}
