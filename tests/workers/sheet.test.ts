import { expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import type { PaperPage } from '../../src/drawing/paper-job.ts';
import type { SheetJob, SheetStrip } from '../../src/drawing/sheet-job.ts';
import { demoGarment } from '../../src/garment/actions/demo.ts';
import { SHIRT } from '../../src/garment/actions/demo-shirt.ts';
import { SKIRT } from '../../src/garment/actions/demo-skirt.ts';
import { WAISTCOAT } from '../../src/garment/actions/demo-waistcoat.ts';
import { pdfOf } from '../../src/workers/pdf.ts';
import { benchOf } from '../controls/helpers.ts';
import { garmentOf, quantity, typed } from '../garment/trial/garments.ts';
import { KNOWN } from '../garment/trial/known.ts';
import { randomGarment } from '../garment/trial/random-garment.ts';
import { linesAt, rendered, textPlaces } from './rendered.ts';
import { pageFaults } from './sheet-faults.ts';
import { saidOf, sheetOn } from './sheets.ts';

const MARGIN = 10;
const GARMENTS = Number(process.env.CASES ?? 13);
const SIZES = ['a4', 'letter'] as const;

const DEMO = demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 1, KNOWN);

/** Invented: a short row, which is at true size on any paper. */
const COLLAR = garmentOf({
  quantities: { edge: { name: 'Collar edge', kind: 'length', rank: 1, parts: typed('11.35') } },
  works: {
    hooks: {
      name: 'Hooks',
      calculation: 'closures',
      rank: 1,
      fields: {
        opening: [quantity('edge')],
        count: typed('4'),
        top: typed('0.95'),
        bottom: typed('1.1'),
        by: typed('count'),
        ends: typed('given'),
      },
    },
  },
});

test('on no sheet of a random garment lies anything on anything, is smaller than 9 pt or leaves the page', () => {
  for (let seed = 1; seed <= GARMENTS; seed++) {
    const bench = benchOf({ unit: seed % 3 === 0 ? 'in' : 'cm' });
    const job = saidOf(randomGarment(seed), bench);
    for (const size of SIZES) {
      for (const long of ['scale', 'true'] as const) {
        const pages = sheetOn(job, { size, long, margin: MARGIN }, bench);
        const faults = pages.flatMap((page, i) =>
          pageFaults(page, MARGIN).map((fault) => `page ${i + 1}: ${fault}`),
        );
        expect(faults, `seed ${seed} on ${size}, ${long}`).toEqual([]);
      }
    }
  }
});

test('the demo, with its measures, materials and fit, is on two pages of A4 and of Letter', () => {
  for (const unit of ['cm', 'mm', 'in'] as const) {
    const bench = benchOf({ unit });
    for (const size of SIZES) {
      expect(sheetOn(saidOf(DEMO, bench), { size }, bench), `${size} in ${unit}`).toHaveLength(2);
    }
  }
});

test('where it would be more than two pages steps stand in columns, the same cautions by a sign: the skirt is on two of A4', () => {
  const job = saidOf(demoGarment(SKIRT, demoWords.skirt, 'skirt', 1, KNOWN));
  const pages = sheetOn(job, { margin: MARGIN });
  expect(pages).toHaveLength(2);
  expect(pages.flatMap((page) => pageFaults(page, MARGIN))).toEqual([]);
  const steps = job.blocks.flatMap((block) => (block.kind === 'step' ? [block] : []));
  expect(
    steps.some(({ under }) => under.some((said) => said.startsWith('(!1) Keep the hand'))),
  ).toBe(true);
  expect(steps.filter(({ what }) => what.endsWith('from the cut end (!1)')).length).toBeGreaterThan(
    1,
  );
});

test('of a work that is done left and right its numbers stand once where they are the same', () => {
  const job = saidOf(demoGarment(SHIRT, demoWords.shirt, 'shirt', 1, KNOWN));
  const names = job.blocks.flatMap((block) =>
    block.kind === 'works' ? block.works.map(({ name }) => name) : [],
  );
  expect(names.filter((name) => name.startsWith('Cuffs'))).toEqual(['Cuffs, left and right']);
});

test('what is longer goes on: no piece is lost or out of order where it takes many pages', () => {
  const job = saidOf(DEMO);
  const many = { ...job, blocks: [1, 2, 3, 4].flatMap(() => job.blocks) };
  const letters = (pages: readonly PaperPage[]) =>
    pages.flatMap(({ shapes }) => shapes.flatMap((one) => (one.kind === 'text' ? [one.text] : [])));
  const once = letters(sheetOn({ ...job, title: '' }, {}));
  const all = letters(sheetOn({ ...many, title: '' }, {}));
  const said = (texts: readonly string[], text: string) => texts.filter((one) => one === text);
  for (const text of new Set(once)) {
    if (/^\d+ of \d+$/.test(text) || job.under.includes(text)) continue;
    expect(said(all, text).length, text).toBe(4 * said(once, text).length);
  }
});

test('every number of a drawing has its name on paper, in any unit', () => {
  for (const unit of ['cm', 'in'] as const) {
    const bench = benchOf({ unit });
    const job = saidOf(DEMO, bench);
    const on = sheetOn(job, {}, bench).flatMap(({ shapes }) =>
      shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])),
    );
    const drawn = job.blocks.flatMap((block) => (block.kind === 'works' ? block.works : []));
    const names = drawn.flatMap((one) => (one.drawn?.dimensions ?? []).map(({ name }) => name));
    expect(names.length).toBeGreaterThan(20);
    for (const name of names) expect(on).toContain(name);
  }
});

test('read back from the file, no lettering is under 9 pt, on other lettering or off the page', async () => {
  for (const [size, garment] of [
    ['a4', DEMO],
    ['letter', randomGarment(4)],
  ] as const) {
    const pages = sheetOn(saidOf(garment), { size, margin: MARGIN });
    const bytes = await pdfOf('Sheet', pages, () => undefined);
    for (const { width, height, texts } of await textPlaces(bytes)) {
      for (const [i, one] of texts.entries()) {
        expect(one.type, one.text).toBeGreaterThanOrEqual(9 - 1e-3);
        expect(one.x, one.text).toBeGreaterThanOrEqual(MARGIN - 0.1);
        expect(one.x + one.wide, one.text).toBeLessThanOrEqual(width - MARGIN + 0.1);
        expect(one.foot, one.text).toBeLessThanOrEqual(height - MARGIN + 0.1);
        const on = texts.slice(i + 1).filter((other) => liesOn(one, other));
        expect(on.map(({ text }) => `${one.text} on ${text}`)).toEqual([]);
      }
    }
  }
});

interface Placed {
  x: number;
  wide: number;
  high: number;
  foot: number;
}

function liesOn(one: Placed, other: Placed): boolean {
  const across = Math.min(one.x + one.wide, other.x + other.wide) - Math.max(one.x, other.x);
  const down =
    Math.min(one.foot, other.foot) - Math.max(one.foot - one.high, other.foot - other.high);
  return across > 0.01 && down > 0.01;
}

test('at true size every mark is within 0.1 mm of its place, on its page and joined at the letters', async () => {
  const errors: number[] = [];
  for (const [size, garment, long] of [
    ['a4', COLLAR, 'scale'],
    ['letter', DEMO, 'true'],
  ] as const) {
    const job = saidOf(garment);
    const pages = sheetOn(job, { size, long, margin: MARGIN });
    const images = await rendered(await pdfOf('Sheet', pages, () => undefined), 400);
    const strips = stripsOf(job);
    let [strip, before] = [0, 0];
    for (const [i, page] of pages.entries()) {
      for (const band of bandsOn(page)) {
        const image = images[i];
        const { marks = [], length = 0 } = strips[strip] ?? {};
        if (!image) throw new Error('no page');
        const left = MARGIN + 7;
        const [zero = left] = before === 0 ? linesAt(image, band.y) : [];
        const from = before === 0 ? zero : left - before;
        for (const { at } of marks) {
          const x = from + at;
          if (x < left + 1 || x > band.right - 1) continue;
          const seen = nearest(linesAt(image, band.y), x);
          errors.push(Math.abs(seen - from - at));
        }
        const whole = before + band.right - left >= length - 0.01;
        if (whole) strip += 1;
        // Parts overlap by 20 mm, with the joining line in the middle of it.
        before = whole ? 0 : before + band.right - left - 20;
      }
    }
    expect(strip).toBe(strips.length);
  }
  expect(errors.length).toBeGreaterThan(80);
  expect(Math.max(...errors)).toBeLessThan(0.1);
});

test('a sheet with anything at true size has bars of 50 mm and 2 in on every page', async () => {
  const pages = sheetOn(saidOf(COLLAR), { size: 'a4', margin: MARGIN });
  const [image] = await rendered(await pdfOf('Sheet', pages, () => undefined), 400);
  if (!image) throw new Error('no page');
  const [a = 0, b = 0, c = 0, d = 0] = linesAt(image, 297 - MARGIN - 4 - 2);
  expect(Math.abs(b - a - 50)).toBeLessThan(0.05);
  expect(Math.abs(d - c - 50.8)).toBeLessThan(0.05);
});

function stripsOf({ blocks }: SheetJob): SheetStrip[] {
  return blocks.flatMap((block) => (block.kind === 'step' && block.strip ? [block.strip] : []));
}

/** Where strips lie: the upper edge of each is a level line, with another 7 mm under it. */
function bandsOn({ shapes }: PaperPage): { y: number; right: number }[] {
  const level = shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.from.y === shape.to.y && shape.from.x === MARGIN + 7
      ? [{ y: shape.from.y, right: shape.to.x }]
      : [],
  );
  return level
    .filter(({ y, right }) =>
      level.some((other) => Math.abs(other.y - y - 7) < 1e-6 && other.right === right),
    )
    .map(({ y, right }) => ({ y: y + 3.5, right }));
}

function nearest(lines: readonly number[], x: number): number {
  return lines.reduce((best, one) => (Math.abs(one - x) < Math.abs(best - x) ? one : best), -1e9);
}
