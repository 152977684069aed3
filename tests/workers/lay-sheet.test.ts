import { describe, expect, test } from 'vitest';
import type { LayJob } from '../../src/drawing/lay-job.ts';
import { layPages } from '../../src/drawing/lay-pages.ts';
import type { PaperPage } from '../../src/drawing/paper-job.ts';
import { layPaperWords } from '../../src/screens/garment/sheet/lay-paper-words.ts';
import { pdfOf } from '../../src/workers/pdf.ts';
import { benchOf } from '../controls/helpers.ts';
import { linesAt, linesDown, rendered } from './rendered.ts';
import { pageFaults } from './sheet-faults.ts';

const MARGIN = 10;
const box = (from: number, to: number, left: number, right: number) =>
  [
    [from, left],
    [to, left],
    [to, right],
    [from, right],
  ] as const;
const piece = (label: string, outline: LayJob['pieces'][number]['outline']) => ({
  ...{ label, outline, heading: `${label} Invented piece` },
  places: ['Cut end: 10 cm to 90 cm', 'Selvedge: 10 cm to 40 cm'],
});
const JOB: LayJob = {
  title: 'Work coat: Cloth',
  under: ['Cloth 140 cm wide, laid open.'],
  ...{ width: 1400, length: 1800, folded: false },
  flaws: [box(1000, 1100, 900, 1000)],
  pieces: [
    piece('1', box(100, 900, 100, 400)),
    piece('2', box(100, 900, 500, 1200)),
    // A triangle: half way along it is half as wide.
    piece('3', [
      [1000, 200],
      [1800, 200],
      [1000, 600],
    ]),
    piece('4', box(1500, 1520, 1000, 1010)),
  ],
  steps: [10, 20, 50, 100, 200, 500],
};
const pagesOf = (job: LayJob, size: 'a4' | 'letter' = 'a4', unit: 'cm' | 'in' = 'cm') => {
  const laid = layPages(job, { size, margin: MARGIN }, layPaperWords(benchOf({ unit })));
  if (!laid.ok) throw new Error(laid.problem.kind);
  return laid.pages;
};
const texts = (pages: readonly PaperPage[]) =>
  pages.flatMap(({ shapes }) => shapes.flatMap((one) => (one.kind === 'text' ? [one.text] : [])));
const near = (all: readonly number[], at: number) =>
  Math.min(...all.map((one) => Math.abs(one - at)));

test('measured back from the rendered file: every edge lies a tenth of its way from the corner', async () => {
  const pages = pagesOf(JOB);
  expect(texts(pages)).toContain('Drawn 10 times smaller than it is.');
  const [page] = await rendered(await pdfOf('Lay', pages, () => undefined), 600);
  if (!page) throw new Error('no page');
  // The first line that is met from the left, well above the end of the cloth, is its left edge; from the right the other.
  const middle = 150;
  const across = linesAt(page, middle);
  const [left, right] = [Math.min(...across), Math.max(...across)];
  expect(right - left).toBeCloseTo(140, 1);
  // Down from there, beside every piece: cut end and end of the lay, 180 mm apart.
  const down = linesDown(page, left + 45);
  const pairs = down.flatMap((a) => down.filter((b) => Math.abs(b - a - 180) < 0.1));
  expect(pairs.length).toBeGreaterThan(0);
  const top = pairs[0]! - 180;
  const row = linesAt(page, top + 50);
  for (const at of [10, 40, 50, 120]) expect(near(row, left + at)).toBeLessThan(0.1);
  // Half way along the triangle, 140 from the cut end, from 20 to 40 across.
  const half = linesAt(page, top + 140);
  for (const at of [20, 40]) expect(near(half, left + at)).toBeLessThan(0.15);
});

describe('on the pages', () => {
  test('every piece has its number where there is room, and is in the list with where it lies', () => {
    const all = texts(pagesOf(JOB));
    for (const label of ['1', '2', '3']) expect(all).toContain(label);
    expect(all).not.toContain('4');
    expect(all).toContain('4 Invented piece');
    expect(all.join(' ')).toMatch(/without its number on the drawing is too small/);
    expect(all).toContain('Cut end: 10 cm to 90 cm · Selvedge: 10 cm to 40 cm');
    expect(all).toContain('140 cm wide. Above, the cut end; left and right, the selvedges.');
    expect(all).toContain('180 cm long');
    // Marks along both edges, as far apart as they can be read: every 20 cm at a tenth.
    for (const mark of ['0', '20', '140', '180']) expect(all).toContain(mark);
  });

  test.each(['a4', 'letter'] as const)(
    'nothing lies on anything or leaves the page of %s',
    (size) => {
      const many = Array.from({ length: 60 }, (_, i) =>
        piece(String(i + 1), box(30 * i, 30 * i + 28, (i % 7) * 100, (i % 7) * 100 + 90)),
      );
      for (const job of [JOB, { ...JOB, pieces: many }, { ...JOB, length: 50_000, folded: true }]) {
        for (const unit of ['cm', 'in'] as const) {
          const faults = pagesOf(job, size, unit).flatMap((page) => pageFaults(page, MARGIN));
          expect(faults).toEqual([]);
        }
      }
    },
  );

  test('a margin that leaves too little is refused', () => {
    const words = layPaperWords(benchOf());
    expect(layPages(JOB, { size: 'a4', margin: 90 }, words)).toMatchObject({ ok: false });
  });
});
