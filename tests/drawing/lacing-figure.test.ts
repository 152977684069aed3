import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure, LineStyle } from '../../src/drawing/figure.ts';
import { type DrawnLacing, lacingFigure } from '../../src/drawing/lacing-figure.ts';
import { placedPaths } from '../../src/drawing/lacing-path.ts';
import { mm, toMm } from '../../src/lengths/length.ts';
import { lace } from '../../src/sewing/lacing/lacing.ts';
import { middleStart } from '../../src/sewing/lacing/lacing-halves.ts';
import type { LacingInput } from '../../src/sewing/lacing/lacing-input.ts';
import { type LacingKind, strandsOf } from '../../src/sewing/lacing/lacing-kinds.ts';
import { KINDS } from '../sewing/lacing/laced.ts';
import { solved } from '../sewing/outcomes.ts';

const MM = { pitch: 8, margin: 5, hole: 2 };
const drawnAs = (kind: LacingKind, set: Partial<DrawnLacing> = {}): DrawnLacing => ({
  ...MM,
  strands: strandsOf(kind, { margin: mm(5), outside: mm(2) }),
  holes: 27,
  start: undefined,
  ...set,
});

const linesOf = (figure: Figure, style: LineStyle) =>
  figure.flatMap((shape) => ('line' in shape && shape.line === style ? [shape.points] : []));
const longOf = (figure: Figure, style: LineStyle) =>
  linesOf(figure, style).reduce((all, points) => {
    const [from, to] = points;
    return from && to ? all + Math.hypot(to.x - from.x, to.y - from.y) : all;
  }, 0);
const ends = (figure: Figure, style: LineStyle) =>
  linesOf(figure, style).map((points) => points.map(({ x, y }) => [x, y]));

describe('drawn to scale (derived here)', () => {
  test('over the edge: slanted on the front, straight on the back, dashed from the other side', () => {
    const front = lacingFigure(drawnAs('edge', { steps: 3 }), 'front');
    expect(ends(front, 'stitch')).toEqual([
      [
        [0, 5],
        [8, 0],
      ],
    ]);
    const straight = [
      [8, 0],
      [8, 5],
    ];
    expect(ends(front, 'behind')).toEqual([straight]);
    const back = lacingFigure(drawnAs('edge', { steps: 3 }), 'back');
    expect(ends(back, 'stitch')).toEqual([straight.map(([x, y]) => [-(x ?? 0), y])]);
    expect(longOf(back, 'behind')).toBeCloseTo(Math.hypot(8, 5), 9);
  });

  test('step by step, each shows the one before and no more than one line more', () => {
    for (const kind of ['outside', 'running', 'single-loop', 'double-loop'] as const) {
      const drawn = [0, 1, 2, 3, 4].map((steps) => {
        const figure = lacingFigure(drawnAs(kind, { steps }), 'front');
        return [...ends(figure, 'stitch'), ...ends(figure, 'behind')].map(String);
      });
      expect(drawn[0]).toEqual([]);
      drawn.slice(1).forEach((now, i) => {
        const before = drawn[i] ?? [];
        expect(now).toEqual(expect.arrayContaining(before));
        expect(now.length - before.length).toBeLessThanOrEqual(1);
      });
    }
  });

  test('holes stand a pitch apart at the margin, the first and last drawn are numbered', () => {
    const front = lacingFigure(drawnAs('edge'), 'front');
    const centres = linesOf(front, 'hole').map((ring) => {
      const xs = ring.map(({ x }) => x);
      return (Math.min(...xs) + Math.max(...xs)) / 2;
    });
    expect(centres).toEqual([0, 8, 16, 24, 32].map((x) => expect.closeTo(x, 9)));
    const labels = front.flatMap((shape) => ('label' in shape ? [shape.label] : []));
    expect(labels).toEqual(['1', '5']);
    expect(linesOf(front, 'cloth')[0]?.map(({ y }) => y)).toEqual([0, 0]);
  });

  test('a lacing that reaches back is drawn where there is something to reach', () => {
    const front = lacingFigure(drawnAs('double-loop'), 'front');
    const labels = front.flatMap((shape) => ('label' in shape ? [shape.label] : []));
    expect(labels).toEqual(['1', '6']);
    const xs = linesOf(front, 'stitch').flatMap((points) => points.map(({ x }) => x));
    expect(Math.min(...xs)).toBe(0);
  });

  test('lace along the edge covers it, on both faces', () => {
    const near = (x: number) => expect.closeTo(x, 9);
    for (const [face, way] of [
      ['front', 1],
      ['back', -1],
    ] as const) {
      const one = lacingFigure(drawnAs('single-loop', { steps: 3 }), face);
      const bare = linesOf(one, 'cloth').map((points) => points.map(({ x }) => way * x));
      expect(bare).toEqual([
        [near(-4.8), near(0)],
        [near(8), near(36.8)],
      ]);
    }
  });

  test('covered all along, nothing is left of it between two runs', () => {
    const bare = linesOf(lacingFigure(drawnAs('single-loop'), 'front'), 'cloth');
    expect(bare).toHaveLength(2);
    expect(longOf(lacingFigure(drawnAs('single-loop'), 'front'), 'cloth')).toBeCloseTo(9.6, 9);
  });

  test('the two threads of a saddle stitch lie on opposite faces everywhere', () => {
    const spans = (style: LineStyle) =>
      new Set(
        linesOf(lacingFigure(drawnAs('saddle'), 'front'), style).map((points) =>
          Math.min(...points.map(({ x }) => x)),
        ),
      );
    expect(spans('stitch')).toEqual(new Set([0, 8, 16, 24]));
    expect(spans('behind')).toEqual(spans('stitch'));
  });

  test('a cross slants both ways over each space on the front, and meets in its middle', () => {
    const slants = ends(lacingFigure(drawnAs('cross'), 'front'), 'stitch').map(([from, to]) =>
      Math.sign(((to?.[0] ?? 0) - (from?.[0] ?? 0)) * ((to?.[1] ?? 0) - (from?.[1] ?? 0))),
    );
    expect(slants.filter((slant) => slant < 0)).toHaveLength(4);
    expect(slants.filter((slant) => slant > 0)).toHaveLength(4);
  });

  test('from the middle both halves are mirror images about where they begin', () => {
    for (const holes of [26, 27]) {
      const front = lacingFigure(
        drawnAs('edge', { holes, start: { left: 12, right: 13 } }),
        'front',
      );
      const about = 8 * 12.5;
      const lines = linesOf(front, 'stitch').map((points) =>
        points.map(({ x, y }) => `${Math.abs(x - about).toFixed(6)} ${y}`).join(),
      );
      expect(new Set(lines).size).toBe(lines.length / 2);
      const runs = ends(front, 'behind').filter(([a, b]) => a?.[1] === 5 && b?.[1] === 5);
      expect(runs).toHaveLength(1);
    }
  });

  test('running from the middle hole, each space is on the other face than the one before', () => {
    const start = middleStart({ kind: 'running', holes: 5, start: 'middle' });
    const front = lacingFigure(drawnAs('running', { holes: 5, start }), 'front');
    const from = (style: LineStyle) =>
      linesOf(front, style)
        .map((points) => Math.min(...points.map(({ x }) => x / 8)))
        .sort();
    expect(from('stitch')).toEqual([0, 2]);
    expect(from('behind')).toEqual([1, 3]);
  });

  test('from the middle it is one lace: where its halves begin, it goes through the hole', () => {
    const anyStart = fc.record({
      kind: fc.constantFrom<LacingKind>('edge', 'outside', 'running', 'single-loop', 'double-loop'),
      holes: fc.integer({ min: 2, max: 40 }),
    });
    fc.assert(
      fc.property(anyStart, ({ kind, holes }) => {
        const start = middleStart({ kind, holes, start: 'middle' });
        const { paths } = placedPaths(drawnAs(kind, { holes, start }));
        const [right, left] = paths.slice(-2).map(([begin]) => begin);
        const [between] = paths;
        const [met, other] = paths.length === 3 ? (between ?? []) : [right, left];
        for (const [begin, end] of [
          [left, met],
          [right, other],
        ]) {
          expect([begin?.along, begin?.across]).toEqual([end?.along, end?.across]);
          expect(begin?.face).not.toBe(end?.face);
        }
      }),
    );
  });
});

test('the straight parts drawn are the length by geometry less passes, turns and tails', () => {
  const anyLacing = fc.record({
    kind: fc.constantFrom(...KINDS),
    holes: fc.integer({ min: 2, max: 5 }),
    start: fc.constantFrom('end' as const, 'middle' as const),
    pitch: fc.integer({ min: 2, max: 30 }),
    margin: fc.integer({ min: 1, max: 15 }),
    outside: fc.integer({ min: 0, max: 5 }),
  });
  fc.assert(
    fc.property(anyLacing, ({ kind, holes, start, pitch, margin, outside }) => {
      // A double loop leaves a hole to reach back to, so it is drawn in a row longer by one.
      const row = kind === 'double-loop' && start === 'end' ? holes + 1 : holes;
      const input: LacingInput = {
        ...{ kind, holes, start, pitch: mm(pitch), margin: mm(margin), outside: mm(outside) },
        ...{ thickness: mm(2), tail: mm(50), longest: mm(2000) },
      };
      const { geometry, parts, extra, tails, strands } = solved(lace(input));
      const lacing = { strands, holes: row, start: middleStart(input), pitch, margin, hole: 1 };
      for (const face of ['front', 'back'] as const) {
        const figure = lacingFigure(lacing, face);
        const drawn = longOf(figure, 'stitch') + longOf(figure, 'behind');
        const rest = geometry - parts.passes * mm(2) - parts.turns * extra - tails;
        expect(drawn).toBeCloseTo(toMm(rest as typeof geometry), 6);
      }
    }),
  );
});
