import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf, letterOf, OVERLAP } from '../../src/drawing/paper-bands.ts';
import {
  PAPER,
  type PaperPage,
  type PaperShape,
  type PaperStrip,
} from '../../src/drawing/paper-job.ts';
import { pagesOf } from '../../src/drawing/paper-pages.ts';
import { paperWords } from '../../src/words/paper-words.ts';

const STRIP: PaperStrip = {
  name: 'Row 1',
  datum: 'Measured from the cut end',
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
  pagesOf({ title: 'Coat', strips }, { size, margin }, paperWords);

function laid(...given: Parameters<typeof pages>): PaperPage[] {
  const outcome = pages(...given);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.pages;
}

const textsOf = ({ shapes }: PaperPage) =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
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
  test('a mark is on some page, once, but for those in an overlap', () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 5000 }), {
      minLength: 1,
      maxLength: 40,
    });
    fc.assert(
      fc.property(places, fc.constantFrom('a4', 'letter'), (at, size) => {
        const marks = at.sort((a, b) => a - b).map((one) => ({ at: one, label: String(one) }));
        const strip = { ...STRIP, length: 5000, rows: [{ across: 5, marks }] };
        const rings = laid([strip], size).flatMap(({ shapes }) =>
          shapes.filter(({ kind }) => kind === 'circle'),
        );
        const bands = bandsOf(5000, PAPER[size].width - 20);
        const expected = at.flatMap((one) =>
          bands.filter(({ from, to }) => one >= from && one <= to),
        );
        expect(rings).toHaveLength(expected.length);
        expect(expected.length).toBeGreaterThanOrEqual(at.length);
      }),
    );
  });

  test('everything lies within the margins, on either paper', () => {
    for (const size of ['a4', 'letter'] as const) {
      for (const { width, height, shapes } of laid([STRIP, { ...STRIP, length: 150 }], size, 12)) {
        expect({ width, height }).toEqual(PAPER[size]);
        const points = shapes.flatMap((shape) =>
          shape.kind === 'line' ? [shape.from, shape.to] : [shape.at],
        );
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

  test('each page is told from the others, and says how to print it and what it is', () => {
    const all = laid([STRIP]);
    expect(all.length).toBeGreaterThan(1);
    for (const [i, page] of all.entries()) {
      const texts = textsOf(page);
      expect(texts).toContain(`${i + 1} of ${all.length}`);
      expect(texts).toContain('Coat');
      expect(texts.some((text) => text.startsWith('Print at actual size'))).toBe(true);
      expect(texts).toEqual(expect.arrayContaining(['50 mm', '2 in']));
      expect(page.shapes.filter(upright).length).toBeGreaterThan(3);
    }
    expect(textsOf(all[0] as PaperPage)).toContain('Measured from the cut end');
  });

  test('what cannot be put on paper is refused, and nothing is laid out', () => {
    expect(pages([])).toEqual({ ok: false, problem: { kind: 'nothing' } });
    expect(pages([{ ...STRIP, rows: [] }])).toMatchObject({
      ok: false,
      problem: { kind: 'nothing' },
    });
    expect(pages([{ ...STRIP, length: 20_001 }])).toMatchObject({ problem: { kind: 'too-long' } });
    expect(pages([STRIP], 'a4', 99)).toMatchObject({ problem: { kind: 'no-room' } });
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
});
