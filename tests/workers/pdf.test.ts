import { beforeAll, expect, test } from 'vitest';
import { bandHeight } from '../../src/drawing/paper-band.ts';
import { bandsOf } from '../../src/drawing/paper-bands.ts';
import {
  PAPER,
  type PaperJob,
  type PaperPage,
  type PaperStrip,
} from '../../src/drawing/paper-job.ts';
import { pagesOf } from '../../src/drawing/paper-pages.ts';
import { paperWords } from '../../src/words/paper-words.ts';
import { pdfOf } from '../../src/workers/pdf.ts';
import { linesAt, type RenderedPage, rendered } from './rendered.ts';

const DPI = 600;
const MARGIN = 10;
const HEAD = 12;

/** Marks over two metres, nowhere evenly spaced. */
const RUN: PaperStrip = {
  name: 'Run',
  datum: 'Measured from the top edge',
  length: 2000,
  width: undefined,
  hole: undefined,
  rows: [
    {
      across: 0,
      marks: Array.from({ length: 170 }, (_, i) => ({
        at: 3 + 11.7 * i + 2.3 * Math.sin(i),
        label: String(i + 1),
      })),
    },
  ],
};
/** Two staggered rows of holes along a strip of 2 m. */
const STRIP: PaperStrip = {
  name: 'Strip',
  datum: 'Measured from the cut end',
  length: 2000,
  width: 20,
  hole: 2,
  rows: [4, 8].map((first, row) => ({
    across: row === 0 ? 5 : 15,
    marks: Array.from({ length: 249 }, (_, i) => ({ at: first + 8 * i, label: String(i + 1) })),
  })),
};

const laid = (job: PaperJob, size: 'a4' | 'letter' = 'a4'): PaperPage[] => {
  const outcome = pagesOf(job, { size, margin: MARGIN }, paperWords);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.pages;
};

/** Bands as they come on the pages: which page, and how far down it begins. */
function bandsOnPages(strip: PaperStrip, size: 'a4' | 'letter' = 'a4') {
  const { width, height } = PAPER[size];
  const each = Math.floor((height - 2 * MARGIN - HEAD - 16) / bandHeight(strip));
  return bandsOf(strip.length, width - 2 * MARGIN).map((band, i) => ({
    ...band,
    page: Math.floor(i / each),
    top: MARGIN + HEAD + (i % each) * bandHeight(strip) + 8,
  }));
}

const nearest = (lines: readonly number[], x: number) =>
  lines.reduce((best, one) => (Math.abs(one - x) < Math.abs(best - x) ? one : best), -1e9);

interface Errors {
  onPage: number[];
  joined: number[];
}

/** Every mark's place on its page, and along the strip once the bands are joined by their marks. */
function errorsOf(
  strip: PaperStrip,
  pages: readonly RenderedPage[],
  scanAt: readonly number[],
): Errors {
  const errors: Errors = { onPage: [], joined: [] };
  let before = 0;
  let joinBefore: number | undefined;
  for (const band of bandsOnPages(strip)) {
    const page = pages[band.page];
    if (!page) throw new Error(`no page ${band.page}`);
    const expected = (at: number) => MARGIN + at - band.from;
    const joins = linesAt(page, band.top - 3);
    const { start, end } = band.joinedAt;
    const startSeen = start === undefined ? MARGIN : nearest(joins, expected(start));
    // The place along the strip of this page's left edge, by what was measured alone.
    const origin = joinBefore === undefined ? -MARGIN : before + joinBefore - startSeen;
    for (const [row, { marks }] of strip.rows.entries()) {
      const lines = linesAt(page, band.top + (scanAt[row] ?? 0));
      for (const { at } of marks) {
        if (at < band.from || at > band.to) continue;
        const seen = nearest(lines, expected(at));
        errors.onPage.push(Math.abs(seen - expected(at)));
        errors.joined.push(Math.abs(origin + seen - at));
      }
    }
    before = origin;
    joinBefore = end === undefined ? undefined : nearest(joins, expected(end));
  }
  return errors;
}

const sorted = (errors: readonly number[]) => [...errors].sort((one, other) => one - other);
const table: Record<string, string | number>[] = [];

function told(what: string, { onPage, joined }: Errors): void {
  const at = (errors: readonly number[], share: number) =>
    (sorted(errors)[Math.floor(share * (errors.length - 1))] ?? Number.NaN).toFixed(4);
  table.push({
    what,
    marks: onPage.length,
    'on its page, 95 %': at(onPage, 0.95),
    'on its page, worst': at(onPage, 1),
    'joined, 95 %': at(joined, 0.95),
    'joined, worst': at(joined, 1),
  });
}

let run: RenderedPage[];
let strip: RenderedPage[];

beforeAll(async () => {
  const pdf = async (one: PaperStrip) =>
    rendered(await pdfOf('Template', laid({ title: 'Coat', strips: [one] }), () => undefined), DPI);
  run = await pdf(RUN);
  strip = await pdf(STRIP);
}, 120_000);

test('at 600 dpi every mark of a run is where it belongs, and joined over two metres', () => {
  const errors = errorsOf(RUN, run, [6]);
  told('a run of marks', errors);
  expect(errors.onPage.length).toBeGreaterThan(170);
  expect(Math.max(...errors.onPage)).toBeLessThan(0.05);
  expect(Math.max(...errors.joined)).toBeLessThan(0.1);
});

test('so is every hole of a strip of two rows', () => {
  // Outside the hole, on its cross hair.
  const errors = errorsOf(STRIP, strip, [5 + 1.5, 15 + 1.5]);
  told('a strip of two rows', errors);
  expect(errors.onPage.length).toBeGreaterThan(498);
  expect(Math.max(...errors.onPage)).toBeLessThan(0.05);
  expect(Math.max(...errors.joined)).toBeLessThan(0.1);
  console.log('Template on paper, rendered at 600 dpi: errors in mm');
  console.table(table);
});

test('every page has a bar of 50 mm and one of 2 in, right to 0.05 mm', () => {
  for (const page of [...run, ...strip]) {
    const ticks = linesAt(page, PAPER.a4.height - MARGIN - 4 - 2);
    expect(ticks).toHaveLength(4);
    const [a = 0, b = 0, c = 0, d = 0] = ticks;
    expect(Math.abs(b - a - 50)).toBeLessThan(0.05);
    expect(Math.abs(d - c - 50.8)).toBeLessThan(0.05);
  }
});

test('a name in letters the font lacks is no failure', async () => {
  const job: PaperJob = { title: 'Жакет 上着 😀 – “Mantel”', strips: [{ ...RUN, length: 100 }] };
  const bytes = await pdfOf(job.title, laid(job), () => undefined);
  expect(new TextDecoder('latin1').decode(bytes.slice(0, 5))).toBe('%PDF-');
  expect(new TextDecoder('latin1').decode(bytes)).not.toMatch(/pdf-lib/i);
});

test('progress is told, and grows', async () => {
  const seen: number[] = [];
  await pdfOf('x', laid({ title: 'x', strips: [RUN, STRIP] }), (done) => seen.push(done));
  expect(seen.length).toBeGreaterThan(2);
  expect(seen).toEqual(sorted(seen));
  expect(seen.every((done) => done > 0 && done < 1)).toBe(true);
});
