import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { minifySync, transformWithOxc } from 'vite';
import { expect, test } from 'vitest';
import { digitCell } from '../../../src/tape/digits/digit-cell.ts';
import { digitLogs, digitReader, surestDigit } from '../../../src/tape/digits/digit-logs.ts';
import { SLIP, SURE } from '../../../src/tape/digits/limits.ts';
import { CLASSES, NO_DIGIT } from '../../../src/tape/digits/network.ts';
import { unpackLayers } from '../../../src/tape/digits/packed-layers.ts';
import { WEIGHTS } from '../../../src/tape/digits/weights.ts';
import { answersOf, cellsOf, figuresOf, isDigit } from '../../train/digits/figures.ts';
import { printed } from '../../train/digits/letter-masks.ts';
import { packLayers } from '../../train/digits/packing.ts';
import { rubbishAside } from '../../train/digits/rubbish-aside.ts';
import { keptAside, settling, trained } from '../../train/digits/typefaces.ts';

const letters = printed(keptAside);
const layers = unpackLayers(WEIGHTS);
const source = { digits: letters, letters, rubbish: rubbishAside, shareOfRubbish: 0.2 };
const sample = cellsOf(source, 1500, 4);
const answers = answersOf(layers, sample);

// All of it is measured by `npm run measure:digits`: 99.80 right of 100, 93 answered, none wrong of 8,379.
test('typefaces that nothing was trained on are recognised, none surely wrong, and most rubbish is', () => {
  const digits = figuresOf(answers.filter(isDigit), SURE);
  expect(digits.right / digits.cells).toBeGreaterThan(0.99);
  expect(digits.answered / digits.cells).toBeGreaterThan(0.92);
  expect(digits.wrong).toBe(0);
  const rubbish = answers.filter((one) => !isDigit(one));
  const { right, cells } = figuresOf(rubbish, 0);
  expect(right / cells).toBeGreaterThan(0.92);
  const taken = rubbish.filter(({ best, share }) => best !== NO_DIGIT && share >= SURE);
  expect(taken.length / cells).toBeLessThan(0.02);
});

test('a share comes true as often as it says', () => {
  const said = answers.reduce((sum, { share }) => sum + share, 0) / answers.length;
  expect(Math.abs(said - figuresOf(answers, 0).right / answers.length)).toBeLessThan(0.015);
  const doubted = answers.filter(({ share }) => share < 0.9);
  const expected = doubted.reduce((sum, { share }) => sum + share, 0);
  expect(Math.abs(figuresOf(doubted, 0).right - expected)).toBeLessThan(
    3 * Math.sqrt(doubted.length / 4),
  );
});

test('no cell rules a digit out', () => {
  const shares = fc.array(fc.double({ min: 1e-6, max: 1, noNaN: true }), {
    minLength: CLASSES,
    maxLength: CLASSES,
  });
  fc.assert(
    fc.property(shares, (parts) => {
      const sum = parts.reduce((total, part) => total + part, 0);
      const logs = digitLogs(Float64Array.from(parts, (part) => part / sum));
      expect(Math.min(...logs)).toBeGreaterThanOrEqual(Math.log(SLIP / CLASSES) - 1e-9);
      expect(logs.reduce((total, log) => total + Math.exp(log), 0)).toBeCloseTo(1, 6);
    }),
    { seed: 16 },
  );
});

test('a digit in doubt is not answered, and an empty cell is none', () => {
  const even = new Float64Array(CLASSES).fill(1 / CLASSES);
  expect(surestDigit(even)).toBeNull();
  const blank = { width: 30, height: 30, pixels: new Uint8Array(900).fill(200) };
  const shares = digitReader().shares(digitCell(blank, { x0: 8, x1: 20, y0: 5, y1: 25 }));
  expect(shares.indexOf(Math.max(...shares))).toBe(NO_DIGIT);
});

test('paler ink on darker ground gives the same cell, and so does another size', () => {
  const mask = letters[0]?.('4');
  if (!mask) throw new Error('no typeface');
  const [width, height] = [mask.width + 20, mask.height + 20];
  const dark = new Uint8Array(width * height).fill(230);
  mask.alpha.forEach((alpha, i) => {
    const at = (Math.floor(i / mask.width) + 10) * width + (i % mask.width) + 10;
    dark[at] = 230 - alpha * 0.7;
  });
  const box = { x0: 10, x1: 10 + mask.width, y0: 10, y1: 10 + mask.height };
  const cell = digitCell({ width, height, pixels: dark }, box);
  const pale = digitCell({ width, height, pixels: dark.map((grey) => 80 + grey / 2) }, box);
  cell.forEach((value, i) => {
    expect(Math.abs((pale[i] as number) - value)).toBeLessThan(0.02);
  });
  const doubled = Uint8Array.from({ length: 4 * width * height }, (_, i) => {
    const [x, y] = [i % (2 * width), Math.floor(i / (2 * width))];
    return dark[(y >> 1) * width + (x >> 1)] as number;
  });
  const twice = { x0: 20, x1: 20 + 2 * mask.width, y0: 20, y1: 20 + 2 * mask.height };
  const large = digitCell({ width: 2 * width, height: 2 * height, pixels: doubled }, twice);
  const off = cell.reduce((sum, value, i) => sum + Math.abs(value - (large[i] as number)), 0);
  expect(off / cell.length).toBeLessThan(0.05);
});

test('weights come out of their packing as they went in', () => {
  expect(packLayers(layers)).toBe(WEIGHTS);
});

test('code and weights take 20 KB at most as they are shipped', async () => {
  const folder = 'src/tape/digits';
  const names = readdirSync(folder).filter((name) => name.endsWith('.ts'));
  const shipped = names.map(async (name) => {
    const { code } = await transformWithOxc(readFileSync(`${folder}/${name}`, 'utf8'), name);
    return minifySync(name, code).code;
  });
  expect(gzipSync((await Promise.all(shipped)).join('')).length).toBeLessThan(20_000);
});

test('the typefaces are free and their licences are as listed; none is in two lists', () => {
  const here = createRequire(import.meta.url);
  const all = [...trained, ...settling, ...keptAside];
  for (const { name, licence } of all) {
    const file = here.resolve(`@fontsource/${name}/package.json`);
    expect(JSON.parse(readFileSync(file, 'utf8')).license, name).toBe(licence);
  }
  expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  expect(keptAside.length).toBeGreaterThanOrEqual(5);
});
