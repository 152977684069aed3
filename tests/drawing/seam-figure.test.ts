import { expect, test } from 'vitest';
import { boundsOf, type Figure, type LineStyle } from '../../src/drawing/figure.ts';
import { countedRow } from '../../src/drawing/row-figure.ts';
import { seamSection } from '../../src/drawing/seam-figure.ts';
import { length, mm, toMm } from '../../src/lengths/length.ts';
import { finishSeam, leastAllowance, USUAL_ROWS } from '../../src/sewing/seams/seam-finish.ts';
import type { Finish, FinishInput } from '../../src/sewing/seams/seam-rows.ts';
import { FELLED } from '../../src/sewing/sources/seams.ts';
import { solved } from '../sewing/outcomes.ts';

function drawn(finish: Finish, given = mm(16), own: Partial<FinishInput> = {}): Figure {
  const plan = solved(finishSeam({ finish, given, ...USUAL_ROWS, ...own }));
  const rows = plan.rows.map(({ do: what, at }) => ({
    what,
    at: at === undefined ? undefined : toMm(at),
  }));
  return seamSection(finish, rows, toMm(plan.consumed));
}

const linesOf = (figure: Figure, style: LineStyle) =>
  figure.flatMap((shape) =>
    'line' in shape && shape.line === style ? [shape.points.map(({ x }) => x)] : [],
  );

const furthest = (figure: Figure, style: LineStyle) => Math.max(...linesOf(figure, style).flat());

test('a French seam encloses its raw edges: they end between the two rows, to scale', () => {
  const figure = drawn('french');
  // 1/4 in to the first row, trimmed to 1/8 in beside it and turned back (enleedesigns.com).
  expect(furthest(figure, 'cloth')).toBeCloseTo(6.35, 6);
  for (const layer of linesOf(figure, 'cloth')) expect(layer.at(-1)).toBeCloseTo(3.175, 6);
});

test('a flat-felled seam is drawn to its fold, its under layer to what it is trimmed to', () => {
  const { given, ...own } = FELLED.value;
  const figure = drawn('felled', given, own);
  // 5/8 − 3/8 = 1/4 in, 1/8 in left under it (bellaonline.com, art60164).
  const [upper, under] = linesOf(figure, 'cloth');
  expect(Math.max(...(upper ?? []))).toBeCloseTo(6.35, 6);
  expect(Math.max(...(under ?? []))).toBeCloseTo(3.175, 6);
  expect(furthest(figure, 'cut')).toBeCloseTo(3.175, 6);
  // What is turned under reaches back 3/8 in from the fold, at most to the seam.
  expect(upper?.at(-1)).toBe(0);
  expect(linesOf(drawn('felled', mm(25), own), 'cloth')[0]?.at(-1)).toBeCloseTo(25 - 2 * 9.525, 6);
});

test('a graded seam is widest outside; a bound one has a strip round each edge', () => {
  const [outer, inner] = linesOf(drawn('graded'), 'cloth');
  expect(Math.max(...(outer ?? []))).toBeGreaterThan(Math.max(...(inner ?? [])));
  expect(linesOf(drawn('bound'), 'cloth')).toHaveLength(4);
  expect(linesOf(drawn('bound'), 'stitch').flat()).toContain(16 - 3.175);
});

test('a plain seam lies open: each allowance under its own side, as wide as it is', () => {
  for (const given of [mm(10), mm(16)]) {
    const figure = drawn('plain', given);
    const [left = [], right = []] = linesOf(figure, 'cloth');
    // Garment first, the raw edge last: pressed open it isn't trimmed (common practice, no source).
    expect(right.at(-1)).toBeCloseTo(toMm(given), 6);
    expect(left.at(-1)).toBeCloseTo(-(right.at(-1) ?? 0), 6);
    expect(Math.sign(left[0] ?? 0)).toBe(-1);
    expect(Math.sign(right[0] ?? 0)).toBe(1);
    expect(left).toContain(0);
    expect(linesOf(figure, 'cut')).toEqual([]);
    // Overcast round the raw edge.
    expect(linesOf(figure, 'stitch').flat()).toContain(right.at(-1));
  }
});

const FINISHES: Finish[] = ['plain', 'french', 'felled', 'mock-french', 'bound', 'graded'];

test.each(FINISHES)(
  '%s: the stitch line is at nothing, no cloth lies beyond what it takes',
  (finish) => {
    const { at, more } = leastAllowance({ finish, given: mm(1), ...USUAL_ROWS });
    for (const given of [length(Math.ceil(at) + (more ? 1 : 0)), mm(16), mm(40)]) {
      const figure = drawn(finish, given);
      expect(linesOf(figure, 'stitch')[0]).toEqual([0, 0]);
      // A strip goes round the edge by half its distance from the cloth.
      const beyond = finish === 'bound' ? 1.05 : 1;
      const edges = linesOf(figure, 'cloth').map((layer) => Math.max(...layer.slice(1)));
      expect(Math.max(...edges)).toBeLessThanOrEqual(toMm(given) * beyond + 6.35);
      expect(Object.values(boundsOf(figure)).every(Number.isFinite)).toBe(true);
    }
  },
);

test('the middle of a row is half way between the holes beside it, to scale', () => {
  for (const count of [2, 7, 26, 27, 2000]) {
    const figure = countedRow(count, 8);
    const [middle] = linesOf(figure, 'measure')[0] ?? [];
    const centres = linesOf(figure, 'hole').map((xs) => (Math.min(...xs) + Math.max(...xs)) / 2);
    const gaps = centres.slice(1).map((x, i) => x - (centres[i] ?? 0));
    for (const gap of gaps) expect(gap).toBeCloseTo(8, 6);
    const nearest = centres.map((x) => Math.abs(x - (middle ?? 0))).sort((a, b) => a - b);
    expect(nearest[0]).toBeCloseTo(count % 2 === 0 ? 4 : 0, 6);
    if (count > 2) expect(nearest[1]).toBeCloseTo(count % 2 === 0 ? 4 : 8, 6);
  }
});

test('the numbers beside the middle are those of its holes, one on each side of it', () => {
  const labels = (count: number) =>
    countedRow(count, 8).flatMap((shape) => ('label' in shape ? [shape.label] : []));
  expect(labels(26)).toContain('13');
  expect(labels(26)).toContain('14');
  expect(labels(27)).toContain('14');
  expect(labels(27)).not.toContain('13');
  expect(labels(2000).filter((label) => ['1000', '1001'].includes(label))).toHaveLength(2);
});
