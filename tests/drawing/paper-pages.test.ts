import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/drawing/figure.ts';
import { bandsOf, letterOf, OVERLAP } from '../../src/drawing/paper-bands.ts';
import {
  PAPER,
  type PaperPage,
  type PaperShape,
  type PaperStrip,
} from '../../src/drawing/paper-job.ts';
import { pagesOf } from '../../src/drawing/paper-pages.ts';
import { joinedPlaces } from './joined.ts';
import { PAGE_WORDS } from './page-words.ts';

const STRIP: PaperStrip = {
  name: 'Row 1',
  datum: 'measured from the cut end',
  length: 2000,
  width: 20,
  hole: 2,
  rows: [
    {
      across: 5,
      marks: [
        { at: 4, label: '1' },
        { at: 1996, label: '2' },
      ],
    },
  ],
};

const pages = (strips: readonly PaperStrip[], size: 'a4' | 'letter' = 'a4', margin = 10) =>
  pagesOf({ title: 'Coat', strips, drawings: [] }, { size, margin }, PAGE_WORDS);

function laid(...given: Parameters<typeof pages>): PaperPage[] {
  const outcome = pages(...given);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.pages;
}

const textsOf = ({ shapes }: PaperPage) =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
/** Level lines that have an upright tick at both ends, from left to right. */
function barsOf({ shapes }: PaperPage): number[] {
  const lines = shapes.filter((shape) => shape.kind === 'line');
  return lines.flatMap(({ from, to }) => {
    if (from.y !== to.y) return [];
    const ticked = [from.x, to.x].every((x) =>
      lines.some(
        (tick) =>
          tick.from.x === x &&
          tick.to.x === x &&
          tick.from.y === from.y - 3 &&
          tick.to.y === from.y + 3,
      ),
    );
    return ticked ? [Math.round((to.x - from.x) * 1e9) / 1e9] : [];
  });
}
const upright = (shape: PaperShape) => shape.kind === 'line' && shape.from.x === shape.to.x;

describe('bands', () => {
  test('cover the length, overlap by what is said, and are joined in the middle of it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 41, max: 400 }),
        (length, room) => {
          const bands = bandsOf(length, room);
          expect(bands[0]?.from).toBe(0);
          expect(bands.at(-1)?.to).toBe(length);
          for (const [i, band] of bands.entries()) {
            expect(band.to - band.from).toBeLessThanOrEqual(room);
            const next = bands[i + 1];
            expect(band.joinedAt.end === undefined).toBe(next === undefined);
            if (!next) continue;
            expect(band.to - next.from).toBeCloseTo(Math.min(OVERLAP, length - next.from), 9);
            expect(next.joinedAt.start).toBe(band.joinedAt.end);
            expect(band.joinedAt.end).toBeCloseTo(next.from + OVERLAP / 2, 9);
            expect(band.joinedAt.end ?? 0).toBeLessThanOrEqual(length);
          }
          // Each band is needed: without the last the end would not be covered.
          const before = bands.at(-2);
          if (before) expect(before.to).toBeLessThan(length);
        },
      ),
    );
  });

  test('letters go on after Z', () => {
    expect([0, 25, 26, 51, 52, 701, 702].map(letterOf)).toEqual([
      'A',
      'Z',
      'AA',
      'AZ',
      'BA',
      'ZZ',
      'AAA',
    ]);
  });
});

describe('pages', () => {
  test('no mark is lost, or doubled but in an overlap; joined, all are where they belong', () => {
    const places = fc
      .tuple(
        fc.constantFrom(90, 2000, 20_000),
        fc.uniqueArray(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 60 }),
      )
      .map(([length, shares]) => ({
        length,
        at: shares.map((share) => share * length).sort((one, other) => one - other),
      }));
    const papers = fc.record({
      size: fc.constantFrom('a4' as const, 'letter' as const),
      margin: fc.double({ min: 0, max: 40, noNaN: true }),
      hole: fc.double({ min: 0.5, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(places, papers, ({ length, at }, { size, margin, hole }) => {
        const marks = at.map((one) => ({ at: one, label: 'x' }));
        const all = laid([{ ...STRIP, length, hole, rows: [{ across: 5, marks }] }], size, margin);
        const seen = joinedPlaces(all);
        const room = PAPER[size].width - 2 * margin;
        const shared = bandsOf(length, room).flatMap(({ from }) => (from > 0 ? [from] : []));
        const isShared = (one: number) =>
          shared.some((from) => one >= from - 0.001 && one <= from + OVERLAP + 0.001);
        for (const one of at) {
          const times = seen.filter((place) => Math.abs(place - one) < 0.001).length;
          const twins = at.filter((other) => Math.abs(other - one) < 0.001).length;
          expect(times).toBeGreaterThanOrEqual(twins);
          if (!isShared(one)) expect(times).toBe(twins);
        }
        expect(seen.filter((place) => !at.some((one) => Math.abs(place - one) < 0.001))).toEqual(
          [],
        );
      }),
      { numRuns: 60 },
    );
  });

  test('everything lies within the margins, on either paper', () => {
    for (const size of ['a4', 'letter'] as const) {
      for (const { width, height, shapes } of laid([STRIP, { ...STRIP, length: 150 }], size, 12)) {
        expect({ width, height }).toEqual(PAPER[size]);
        const points = shapes.flatMap((shape) => {
          if (shape.kind === 'line') return [shape.from, shape.to];
          return shape.kind === 'path' ? shape.points : [shape.at];
        });
        for (const { x, y } of points) {
          expect(x).toBeGreaterThanOrEqual(12 - 1e-9);
          expect(x).toBeLessThanOrEqual(width - 12 + 1e-9);
          expect(y).toBeGreaterThanOrEqual(12 - 1e-9);
          expect(y).toBeLessThanOrEqual(height - 12 + 1e-9);
        }
        for (const shape of shapes) {
          if (shape.kind !== 'text') continue;
          // Helvetica's letters are 0.556 of the type size on average, and that 1/0.72 of ours.
          const wide = shape.text.length * shape.size * (0.556 / 0.72);
          expect(shape.at.x + wide, shape.text).toBeLessThanOrEqual(width);
        }
      }
    }
  });

  test('lettering of a drawing ends within the margins too, on one page or cut at a tile', () => {
    const label = 'depth 30.48 cm';
    const across = (width: number): Figure => [
      {
        line: 'cloth',
        points: [
          { x: 0, y: 0 },
          { x: width, y: 0 },
        ],
      },
      ...[100, width - 8, width + 4].map((x) => ({ label, at: { x, y: -0.5 } })),
      // Where the first of two pages ends.
      ...(width > 300 ? [{ label, at: { x: 270, y: -9 } }] : []),
    ];
    for (const width of [200, 270, 400]) {
      const drawings = [{ name: 'Hem', figure: across(width) }];
      const all = pagesOf(
        { title: '', strips: [], drawings },
        { size: 'a4', margin: 10 },
        PAGE_WORDS,
      );
      if (!all.ok) throw new Error('refused');
      const texts = all.pages.flatMap(({ shapes }) =>
        shapes.flatMap((shape) => (shape.kind === 'text' && shape.text === label ? [shape] : [])),
      );
      expect(texts.length).toBeGreaterThanOrEqual(width > 300 ? 4 : 3);
      for (const { at, size } of texts) {
        expect(at.x).toBeGreaterThanOrEqual(10 - 1e-9);
        const wide = label.length * size * (0.556 / 0.72);
        expect(at.x + wide, `${width} mm`).toBeLessThanOrEqual(297 - 10);
        expect(at.y - size).toBeGreaterThanOrEqual(10 + 12 - 1e-9);
      }
    }
  });

  test('each page is told from the others, and says how to print it and what it is', () => {
    const all = laid([STRIP]);
    expect(all.length).toBeGreaterThan(1);
    for (const [i, page] of all.entries()) {
      const texts = textsOf(page);
      expect(texts).toContain(`${i + 1} of ${all.length}`);
      expect(texts).toContain('Coat');
      expect(texts.some((text) => text.startsWith('Print at actual size'))).toBe(true);
      expect(texts).toEqual(expect.arrayContaining(['Measure this: 50 mm', 'and this: 2 in']));
      expect(barsOf(page)).toEqual([50, 50.8]);
      expect(
        texts.some((text) => text.endsWith('measured from the cut end, along the arrow')),
      ).toBe(true);
      expect(page.shapes.filter(upright).length).toBeGreaterThan(3);
    }
  });

  test('what cannot be put on paper is refused, and nothing is laid out', () => {
    expect(pages([])).toEqual({ ok: false, problem: { kind: 'nothing' } });
    expect(pages([{ ...STRIP, rows: [] }])).toMatchObject({
      ok: false,
      problem: { kind: 'nothing' },
    });
    expect(pages([{ ...STRIP, length: 20_001 }])).toMatchObject({ problem: { kind: 'too-long' } });
    expect(pages([STRIP], 'a4', 99)).toMatchObject({ problem: { kind: 'no-room' } });
    expect(pages([STRIP], 'a4', 200)).toMatchObject({ problem: { kind: 'no-room' } });
    expect(pages([STRIP], 'a4', -1)).toMatchObject({ problem: { kind: 'no-room' } });
    expect(pages([STRIP], 'a4', Number.NaN)).toMatchObject({ problem: { kind: 'no-room' } });
    const wide = pages([{ ...STRIP, width: 200 }]);
    expect(wide).toMatchObject({ problem: { kind: 'too-wide' } });
    if (wide.ok || wide.problem.kind !== 'too-wide') throw new Error('not refused');
    expect(pages([{ ...STRIP, width: wide.problem.most }]).ok).toBe(true);
    expect(pages([{ ...STRIP, width: wide.problem.most + 1 }]).ok).toBe(false);
    const narrow = pages([STRIP], 'letter', 95);
    if (narrow.ok || narrow.problem.kind !== 'no-room') throw new Error('not refused');
    expect(pages([{ ...STRIP, width: undefined }], 'letter', narrow.problem.most).ok).toBe(true);
  });

  test('at the widest margins how to print it ends before the row of pages begins', () => {
    for (const size of ['a4', 'letter'] as const) {
      const refused = pages([STRIP], size, 100);
      if (refused.ok || refused.problem.kind !== 'no-room') throw new Error('not refused');
      const margin = refused.problem.most;
      const [page] = laid([{ ...STRIP, width: undefined }], size, margin);
      const how = page?.shapes.find(
        (shape) => shape.kind === 'text' && shape.text.startsWith('Print at actual size'),
      );
      // In the font of the PDF it is 136.8 mm long: measured with it.
      expect(how?.kind === 'text' && how.at.x + 136.8).toBeLessThan(
        PAPER[size].width - margin - 40,
      );
    }
  });

  test('more pages than anyone joins are refused before any is drawn', () => {
    const square = (side: number): Figure => [
      {
        line: 'cloth',
        points: [
          { x: 0, y: 0 },
          { x: side, y: side },
        ],
      },
    ];
    const drawing = (side: number, words = PAGE_WORDS) =>
      pagesOf(
        { title: 'Coat', strips: [], drawings: [{ name: 'Corner', figure: square(side) }] },
        { size: 'a4', margin: 10 },
        words,
      );
    const undrawn = {
      ...PAGE_WORDS,
      tileOf: () => {
        throw new Error('a page was drawn');
      },
    };
    // Columns of 257 mm and rows of 125.8, each 20 mm into the next.
    const problem = { kind: 'too-many', pages: 12 * 24, most: 200 };
    expect(drawing(3000, undrawn)).toEqual({ ok: false, problem });
    expect(drawing(20_000, undrawn)).toMatchObject({ problem: { pages: 78 * 159 } });
    expect(drawing(2500)).toMatchObject({ ok: true, pages: { length: 10 * 20 } });
  });

  test('the row of pages takes no more lines, however many there are', () => {
    const wide = { ...STRIP, length: 19_000, width: 140, rows: STRIP.rows };
    const few = laid([{ ...wide, length: 9000 }]);
    const many = laid([wide]);
    expect(few.length).toBeLessThan(40);
    expect(many.length).toBeGreaterThan(60);
    const mapLines = ({ shapes, width }: PaperPage) =>
      shapes.filter(
        (shape) =>
          shape.kind === 'line' && shape.from.x >= width - 50 - 1e-9 && shape.from.y < 10 + 12,
      );
    expect(mapLines(few[5]!).length).toBe(few.length + 1 + 4);
    for (const page of [many[0]!, many[30]!, many.at(-1)!]) {
      const lines = mapLines(page);
      expect(lines.length).toBeLessThan(10);
      for (const shape of lines) {
        if (shape.kind !== 'line') continue;
        for (const { x } of [shape.from, shape.to]) {
          expect(x).toBeGreaterThanOrEqual(page.width - 50 - 1e-9);
          expect(x).toBeLessThanOrEqual(page.width - 10 + 1e-9);
        }
      }
    }
  });
});
