import { PDFDocument, StandardFonts } from '@cantoo/pdf-lib';
import { beforeAll, expect, test } from 'vitest';
import {
  PAPER,
  type PaperJob,
  type PaperPage,
  type PaperStrip,
} from '../../src/drawing/paper-job.ts';
import { lettersLacking } from '../../src/drawing/paper-letters.ts';
import { pagesOf } from '../../src/drawing/paper-pages.ts';
import { pdfOf } from '../../src/workers/pdf.ts';
import { PAGE_WORDS } from '../drawing/page-words.ts';
import { type Errors, errorsOf } from './measured.ts';
import { aboutOf, linesAt, type RenderedPage, rendered, textsOf } from './rendered.ts';

const DPI = 600;
const MARGIN = 10;

/** Marks over two metres, nowhere evenly spaced. */
const RUN: PaperStrip = {
  name: 'Run',
  datum: 'measured from the top edge',
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
  datum: 'measured from the cut end',
  length: 2000,
  width: 20,
  hole: 2,
  rows: [4, 8].map((first, row) => ({
    across: row === 0 ? 5 : 15,
    marks: Array.from({ length: 249 }, (_, i) => ({ at: first + 8 * i, label: String(i + 1) })),
  })),
};

const laid = (job: PaperJob, size: 'a4' | 'letter' = 'a4'): PaperPage[] => {
  const outcome = pagesOf(job, { size, margin: MARGIN }, PAGE_WORDS);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.pages;
};

const sorted = (errors: readonly number[]) => [...errors].sort((one, other) => one - other);
const table: Record<string, string | number>[] = [];

function told(what: string, { onPage, down, joined }: Errors): void {
  const at = (errors: readonly number[], share: number) =>
    sorted(errors)[Math.floor(share * (errors.length - 1))]?.toFixed(4) ?? '–';
  table.push({
    what,
    marks: onPage.length,
    'along, on its page, 95 %': at(onPage, 0.95),
    worst: at(onPage, 1),
    'across, 95 %': at(down, 0.95),
    'across, worst': at(down, 1),
    'joined, 95 %': at(joined, 0.95),
    'joined, worst': at(joined, 1),
  });
}

let run: RenderedPage[];
let strip: RenderedPage[];

beforeAll(async () => {
  const pdf = async (one: PaperStrip) =>
    rendered(
      await pdfOf(
        'Template',
        laid({ title: 'Coat', strips: [one], drawings: [] }),
        () => undefined,
      ),
      DPI,
    );
  run = await pdf(RUN);
  strip = await pdf(STRIP);
}, 120_000);

test('at 600 dpi every mark of a run is where it belongs, and joined over two metres', () => {
  const errors = errorsOf(RUN, run, [6], MARGIN);
  told('a run of marks', errors);
  expect(errors.marks.size).toBe(170);
  expect(Math.max(...errors.onPage)).toBeLessThan(0.05);
  expect(Math.max(...errors.joined)).toBeLessThan(0.1);
});

test('so is every hole of a strip of two rows', () => {
  // Outside the hole, on its cross hair.
  const errors = errorsOf(STRIP, strip, [5 + 1.5, 15 + 1.5], MARGIN);
  told('a strip of two rows', errors);
  expect(errors.marks.size).toBe(498);
  expect(Math.max(...errors.down)).toBeLessThan(0.05);
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

test('a hole is a ring to be seen through, as large as it is punched', () => {
  const [page] = strip;
  if (!page) throw new Error('no page');
  // Above the first hole's level hair, half way to the ring: the upright hair alone in the ring.
  const y = MARGIN + 12 + 8 + 5 - 0.6;
  const seen = linesAt(page, y).filter((x) => Math.abs(x - MARGIN - 4) < 1.5);
  expect(seen).toHaveLength(3);
  const half = Math.sqrt(1 - 0.6 * 0.6);
  for (const [i, x] of [-half, 0, half].entries()) {
    expect(Math.abs((seen[i] ?? 0) - (MARGIN + 4 + x))).toBeLessThan(0.05);
  }
});

test('a name in letters the font lacks is no failure', async () => {
  const title = 'Жакет 上着 😀 – “Mantel”';
  const job: PaperJob = { title, strips: [{ ...RUN, length: 100 }], drawings: [] };
  const bytes = await pdfOf(title, laid(job), () => undefined);
  expect(new TextDecoder('latin1').decode(bytes.slice(0, 5))).toBe('%PDF-');
  expect(await textsOf(bytes)).toContain('????? ?? ? – “Mantel”');
});

test('a letter and its accent as two characters are the one letter the font has', async () => {
  const job: PaperJob = {
    title: 'Cafe\u0301 crème',
    strips: [{ ...RUN, length: 100 }],
    drawings: [],
  };
  expect(await textsOf(await pdfOf('Café', laid(job), () => undefined))).toContain('Café crème');
});

test('which letters the paper can show is what the font says', async () => {
  const font = await (await PDFDocument.create()).embedFont(StandardFonts.Helvetica);
  const known = new Set(font.getCharacterSet());
  for (let code = 1; code < 0x3000; code++) {
    const letter = String.fromCodePoint(code);
    if (letter.normalize('NFC') !== letter) continue;
    expect(lettersLacking(letter) === '', `U+${code.toString(16)}`).toBe(known.has(code));
  }
});

test('the file has its title, asks not to be scaled, and names no maker of PDFs', async () => {
  const bytes = await pdfOf('Coat', laid({ title: 'Coat', strips: [RUN], drawings: [] }), () => {});
  const about = await aboutOf(bytes);
  expect(about.info.Title).toBe('Coat');
  expect(about.info.Producer || about.info.Creator || '').toBe('');
  expect(about.printing).toMatchObject({ PrintScaling: 'None' });
});

test('progress is told, and grows', async () => {
  const seen: number[] = [];
  await pdfOf('x', laid({ title: 'x', strips: [RUN, STRIP], drawings: [] }), (done) =>
    seen.push(done),
  );
  expect(seen.length).toBeGreaterThan(2);
  expect(seen).toEqual(sorted(seen));
  expect(seen.every((done) => done > 0 && done < 1)).toBe(true);
});
