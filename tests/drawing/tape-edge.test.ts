import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type TapeView, textWidth } from '../../src/drawing/tape-layout.ts';
import { tapeStrip } from '../../src/drawing/tape-strip.ts';
import { exactLength, mm, UNITS_PER_INCH, UNITS_PER_MM } from '../../src/lengths/length.ts';
import { BENCH_VIEWS } from './tape-arbitrary.ts';
import { lines, runOf, texts, ticks, view } from './tape-view.ts';

// Laws of a scale drawing, derived here, but for the inch: 25.4 mm exactly
// (NBS Circular 572, addendum of 22 Jan 1960).

test('every millimetre and every sixteenth is where the scale puts it', () => {
  const [upper, lower] = ticks(tapeStrip(runOf(36), view()));
  expect(upper.map(({ x }) => x)).toEqual(Array.from({ length: 37 }, (_, n) => n * 10));
  expect(upper[10]!.x).toBe(100);
  expect(lower).toHaveLength(23); // 36 mm hold 22.67 sixteenths
  expect(lower[16]!.x).toBe(254);
  expect(lower[1]!.x).toBe(15.875);
});

test('centimetre, half and millimetre are told apart by length, and so are the parts of an inch', () => {
  const [upper, lower] = ticks(tapeStrip(runOf(60), view({ pxPerMm: 5.9 })));
  const long = (each: { from: number; to: number } | undefined) => Math.abs(each!.to - each!.from);
  expect(long(upper[10])).toBeGreaterThan(long(upper[5]));
  expect(long(upper[5])).toBeGreaterThan(long(upper[1]));
  const parts = [16, 8, 4, 2, 1].map((n) => long(lower[n]));
  expect(parts).toEqual([...new Set(parts)].sort((a, b) => b - a));
  expect(upper.every(({ from }) => from === 0)).toBe(true);
  expect(lower.every(({ from }) => from === 84)).toBe(true);
});

test('numbers stand at their ticks, counted in the unit of the edge', () => {
  const at = (change: Partial<TapeView>) =>
    texts(tapeStrip(runOf(300), view(change)), 'number').map(({ x, text }) => `${text}@${x}`);
  expect(at({ pxPerMm: 3, edges: ['cm', 'in'] })).toEqual([
    ...['1@30', '2@60', '3@90', '4@120', '5@150', '6@180', '7@210', '8@240', '9@270'],
    ...['10@300', '11@330', '1@76.2', '2@152.4', '3@228.6', '4@304.8'],
  ]);
  expect(at({ pxPerMm: 3, edges: ['in', 'mm'] }).slice(0, 6)).toEqual([
    ...['1@76.2', '2@152.4', '3@228.6', '4@304.8', '20@60', '40@120'],
  ]);
});

test('where half centimetres have room they are numbered, with the maker’s decimal mark', () => {
  const shapes = tapeStrip(runOf(15), view({ pxPerMm: 20, decimalMark: ',' }));
  expect(texts(shapes, 'number').map(({ text }) => text)).toContain('0,5');
});

test('the tape begins at zero, and goes on past the cloth', () => {
  const shapes = tapeStrip(runOf(10), view({ start: mm(-10) }));
  const [upper] = ticks(shapes);
  expect(upper[0]!.x).toBe(100);
  expect(upper.at(-1)!.x).toBe(360);
});

test('the cloth’s edges are drawn, and what lies past them is set apart', () => {
  const shapes = tapeStrip(runOf(10), view({ start: mm(-10) }));
  expect(lines(shapes, 'cloth-edge').map(({ x }) => x)).toEqual([100, 200]);
  const beyond = shapes.flatMap((each) => (each.role === 'beyond' ? [each] : []));
  expect(beyond).toEqual([
    { shape: 'path', role: 'beyond', d: 'M0 0H100V84H0Z' },
    { shape: 'path', role: 'beyond', d: 'M200 0H360V84H200Z' },
  ]);
  const within = tapeStrip(runOf(100), view({ start: mm(10) }));
  expect(within.some(({ role }) => role === 'beyond' || role === 'cloth-edge')).toBe(false);
});

test('a scale that is none is a bug and says which', () => {
  for (const pxPerMm of [0, -1, Number.NaN, Infinity]) {
    expect(() => tapeStrip(runOf(10), view({ pxPerMm }))).toThrow(String(pxPerMm));
  }
});

test('neighbouring ticks are evenly spaced and never nearer than the limit', () => {
  fc.assert(
    fc.property(BENCH_VIEWS, fc.integer({ min: 1, max: 100_000 }), (seen, lengthMm) => {
      for (const edge of ticks(tapeStrip(runOf(lengthMm), seen))) {
        const gaps = edge.slice(1).map(({ x }, i) => x - edge[i]!.x);
        for (const gap of gaps) {
          expect(gap).toBeGreaterThanOrEqual(seen.tickGap - 0.0011);
          expect(Math.abs(gap - gaps[0]!)).toBeLessThan(0.0021);
        }
      }
    }),
  );
});

test('each number is at a tick of the longest kind, at that many units from zero', () => {
  fc.assert(
    fc.property(BENCH_VIEWS, (seen) => {
      const shapes = tapeStrip(runOf(1000), seen);
      const sides = ticks(shapes);
      for (const { x, y, text } of texts(shapes, 'number')) {
        const side = y < seen.height / 2 ? 0 : 1;
        const inches = seen.edges[side] === 'in';
        const unit = inches ? UNITS_PER_INCH : UNITS_PER_MM * (seen.edges[side] === 'cm' ? 10 : 1);
        const units = Number(text.replace(',', '.')) * unit;
        const place = ((units - seen.start) / UNITS_PER_MM) * seen.pxPerMm;
        expect(Math.abs(x - place)).toBeLessThan(0.001);
        const tick = sides[side].find((each) => each.x === x);
        const longest = Math.max(...sides[side].map(({ from, to }) => Math.abs(to - from)));
        expect(Math.abs(tick!.to - tick!.from)).toBeCloseTo(longest, 6);
      }
    }),
  );
});

test('no two numbers touch, and none is cut by the end of the strip', () => {
  fc.assert(
    fc.property(BENCH_VIEWS, fc.integer({ min: 1, max: 100_000 }), (seen, lengthMm) => {
      const numbers = texts(tapeStrip(runOf(lengthMm), seen), 'number');
      const end = [-1, -1];
      for (const { x, y, text } of numbers) {
        const half = textWidth(text, seen.labelSize) / 2;
        const side = y < seen.height / 2 ? 0 : 1;
        expect(x - half).toBeGreaterThan(end[side]!);
        expect(x - half).toBeGreaterThanOrEqual(0);
        expect(x + half).toBeLessThanOrEqual(seen.width);
        end[side] = x + half;
      }
    }),
  );
});

test('the same run never changes its numbers while it is panned', () => {
  const step = (startMm: number) =>
    stepOf(view({ pxPerMm: 0.6, start: exactLength(startMm * UNITS_PER_MM) }), 0, 2000);
  expect([0, 400, 1200, 1600].map(step)).toEqual([10, 10, 10, 10]);
});

test('numbers are 1, 2 or 5 apart in tens on the metric edge, and go by the foot in inches', () => {
  const scales = Array.from({ length: 200 }, (_, i) => 20 * 0.96 ** i);
  const steps = (edge: 0 | 1) => [
    ...new Set(scales.map((pxPerMm) => stepOf(view({ pxPerMm, width: 3000 }), edge, 1))),
  ];
  expect(steps(0).slice(0, 10)).toEqual([0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500]);
  expect(steps(1).slice(0, 8)).toEqual([1, 2, 3, 6, 12, 24, 60, 120]);
});

/** How far apart the first two numbers of an edge are. */
function stepOf(seen: TapeView, edge: 0 | 1, lengthMm: number): number {
  const upper = (y: number) => y < seen.height / 2;
  const [one, other] = texts(tapeStrip(runOf(lengthMm), seen), 'number').filter(
    ({ y }) => upper(y) === (edge === 0),
  );
  return Number(other!.text) - Number(one!.text);
}
