import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clipped } from '../../src/drawing/clip.ts';
import { boundsOf, type Figure, type Point } from '../../src/drawing/figure.ts';
import { circle } from '../../src/drawing/figure-ring.ts';
import type { PaperShape } from '../../src/drawing/paper-job.ts';
import { laidOn, tileHeight, tileShapes, tilesOf } from '../../src/drawing/paper-tile.ts';
import { PAGE_WORDS } from './page-words.ts';

const ROOM = { across: 277, down: 162 };
const coordinate = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const point = fc.record({ x: coordinate(1500), y: coordinate(900) });

/** How far a place is from the nearest of some straight lines. */
function distance(at: Point, lines: readonly (readonly [Point, Point])[]): number {
  const to = ([from, end]: readonly [Point, Point]) => {
    const way = { x: end.x - from.x, y: end.y - from.y };
    const long = way.x ** 2 + way.y ** 2;
    const along = long === 0 ? 0 : ((at.x - from.x) * way.x + (at.y - from.y) * way.y) / long;
    const share = Math.min(1, Math.max(0, along));
    return Math.hypot(at.x - from.x - share * way.x, at.y - from.y - share * way.y);
  };
  return Math.min(...lines.map(to));
}

const segments = (points: readonly Point[]) =>
  points.slice(1).map((to, i) => [points[i] as Point, to] as const);

/** The crosses of a tile by their letters, as they are printed: level arm, upright arm, letter. */
function crossesOf(shapes: readonly PaperShape[]): Map<string, Point[]> {
  const crosses = new Map<string, Point[]>();
  for (const [i, shape] of shapes.entries()) {
    const [level, upright] = [shapes[i - 2], shapes[i - 1]];
    if (shape.kind !== 'text' || level?.kind !== 'line' || upright?.kind !== 'line') continue;
    const at = { x: upright.from.x, y: level.from.y };
    crosses.set(shape.text, [...(crosses.get(shape.text) ?? []), at]);
  }
  return crosses;
}

/** What moves each tile onto the first one, found by its joining crosses alone. */
function joinedBy(tiles: readonly (readonly PaperShape[])[]): (Point | undefined)[] {
  const crosses = tiles.map(crossesOf);
  const moves: (Point | undefined)[] = tiles.map((_, i) => (i === 0 ? { x: 0, y: 0 } : undefined));
  for (let found = true; found; ) {
    found = false;
    for (const [one, move] of moves.entries()) {
      for (const [letter, here] of move ? (crosses[one] ?? []) : []) {
        const other = crosses.findIndex((map, i) => i !== one && map.has(letter));
        const there = crosses[other]?.get(letter);
        if (!there || !move || moves[other]) continue;
        const by = here.map(({ x, y }, i) => ({
          x: x - (there[i]?.x ?? Number.NaN),
          y: y - (there[i]?.y ?? Number.NaN),
        }));
        // Both crosses say the same, or the tile would have to be turned.
        expect(by[1]?.x).toBeCloseTo(by[0]?.x ?? Number.NaN, 6);
        expect(by[1]?.y).toBeCloseTo(by[0]?.y ?? Number.NaN, 6);
        moves[other] = { x: move.x + (by[0]?.x ?? 0), y: move.y + (by[0]?.y ?? 0) };
        found = true;
      }
    }
  }
  return moves;
}

test('tiles of a drawing, joined by their crosses, are the drawing again to 0.001 mm', () => {
  const lines = fc.array(fc.array(point, { minLength: 2, maxLength: 5 }), {
    minLength: 1,
    maxLength: 5,
  });
  fc.assert(
    fc.property(lines, fc.array(point, { maxLength: 4 }), point, (drawn, holes, corner) => {
      const figure: Figure = [
        ...drawn.map((points) => ({ line: 'cut' as const, points })),
        ...holes.map((at) => circle(at, 3, 'hole')),
      ];
      const laid = laidOn(figure, ROOM);
      const tiles = tilesOf(laid.figure, ROOM, 0).map((tile, i) => {
        const at = { x: corner.x + i, y: corner.y - i };
        return tileShapes({ name: 'Corner', figure }, laid, tile, at, PAGE_WORDS);
      });
      const moves = joinedBy(tiles);
      expect(moves.every(Boolean)).toBe(true);
      const back = (i: number) => (at: Point) => ({
        x: at.x + (moves[i]?.x ?? 0) - corner.x,
        y: at.y + (moves[i]?.y ?? 0) - corner.y,
      });
      const paths = tiles.flatMap((shapes, i) =>
        shapes.flatMap((shape) => (shape.kind === 'path' ? [shape.points.map(back(i))] : [])),
      );
      const circles = tiles.flatMap((shapes, i) =>
        shapes.flatMap((shape) => (shape.kind === 'circle' ? [back(i)(shape.at)] : [])),
      );
      const printed = paths.flatMap(segments);
      const near = (one: Point, other: Point) =>
        Math.hypot(one.x - other.x, one.y - other.y) < 0.001;
      for (const shape of laid.figure) {
        if (!('line' in shape)) continue;
        const { ring } = shape;
        if (ring) {
          // Whole on one tile, or cut by every edge it lies on.
          const rim = Array.from({ length: 12 }, (_, i) => ({
            x: ring.at.x + 3 * Math.cos((i * Math.PI) / 6),
            y: ring.at.y + 3 * Math.sin((i * Math.PI) / 6),
          }));
          const isWhole = circles.some((at) => near(at, ring.at));
          if (!isWhole) for (const at of rim) expect(distance(at, printed)).toBeLessThan(0.001);
          continue;
        }
        for (const [from, to] of segments(shape.points)) {
          for (const share of [0, 0.31, 0.5, 1]) {
            const at = {
              x: from.x + share * (to.x - from.x),
              y: from.y + share * (to.y - from.y),
            };
            expect(distance(at, printed)).toBeLessThan(0.001);
          }
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('a drawing that takes fewer pages so is turned, and says so; never mirrored', () => {
  const tall: Figure = [
    {
      line: 'cut',
      points: [
        { x: 0, y: 0 },
        { x: 0, y: 270 },
        { x: 100, y: 270 },
      ],
    },
  ];
  const laid = laidOn(tall, ROOM);
  expect(laid.turned).toBe(true);
  const [tile] = tilesOf(laid.figure, ROOM, 0);
  if (!tile) throw new Error('no tile');
  const shapes = tileShapes({ name: 'L', figure: tall }, laid, tile, { x: 0, y: 0 }, PAGE_WORDS);
  expect(
    shapes.some((shape) => shape.kind === 'text' && shape.text === 'L, turned by a quarter'),
  ).toBe(true);
  const [line] = laid.figure;
  if (!line || !('line' in line)) throw new Error('no line');
  const [a, b, c] = line.points as [Point, Point, Point];
  const turn = (one: Point, two: Point, three: Point) =>
    Math.sign((two.x - one.x) * (three.y - two.y) - (two.y - one.y) * (three.x - two.x));
  expect(turn(a, b, c)).toBe(turn({ x: 0, y: 0 }, { x: 0, y: 270 }, { x: 100, y: 270 }));
  expect(boundsOf(laid.figure)).toEqual({ x: 0, y: 0, width: 270, height: 100 });
  expect(laidOn([circle({ x: 0, y: 0 }, 20)], ROOM).turned).toBe(false);
});

describe('what a page says of a drawing', () => {
  const figure: Figure = [
    {
      line: 'cloth',
      points: [
        { x: 0, y: 0 },
        { x: 500, y: 0 },
      ],
    },
    circle({ x: 20, y: 10 }, 1.5, 'hole'),
    circle({ x: 40, y: 10 }, 1.5, 'cut'),
    circle({ x: 60, y: 30 }, 1.5, 'cut'),
  ];
  const laid = laidOn(figure, ROOM);
  const pages = tilesOf(laid.figure, ROOM, 0).map((tile) =>
    tileShapes({ name: 'Crossing', figure }, laid, tile, { x: 10, y: 22 }, PAGE_WORDS),
  );
  const [first = []] = pages;
  const hairsAt = (x: number, y: number) =>
    first.filter(
      (shape) =>
        shape.kind === 'line' &&
        Math.abs((shape.from.x + shape.to.x) / 2 - x - 10) < 1e-9 &&
        Math.abs((shape.from.y + shape.to.y) / 2 - y - 22) < 1e-9,
    ).length;
  const textsOf = (shapes: readonly PaperShape[]) =>
    shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));

  test('a hole to punch has a cross hair, as on a strip; one that is made has none', () => {
    expect([hairsAt(20, 10), hairsAt(40, 10), hairsAt(60, 30)]).toEqual([0, 2, 2]);
  });

  test('the key of its lines, each beside its word', () => {
    for (const shapes of pages) {
      const key = ['cloth', 'hole, made', 'hole to punch'].map((word) => {
        const i = shapes.findIndex((shape) => shape.kind === 'text' && shape.text === word);
        const word_ = shapes[i];
        if (word_?.kind !== 'text') throw new Error(`no ${word}`);
        return { word: word_, before: shapes.slice(0, i) };
      });
      for (const { word, before } of key) {
        const sample = before.findLast((shape) => shape.kind !== 'line' && shape.kind !== 'text');
        const at = sample?.kind === 'path' ? sample.points.at(-1) : undefined;
        const x = sample?.kind === 'circle' ? sample.at.x : (at?.x ?? Number.NaN);
        expect(word.at.x - x).toBeGreaterThan(0);
        expect(word.at.x - x).toBeLessThan(5);
      }
      // One after the other, on the foot line of its own.
      expect(new Set(key.map(({ word }) => word.at.y)).size).toBe(1);
      const ends = key.map(({ word }) => word.at.x + word.text.length * word.size * 0.78);
      expect(key[1]!.word.at.x).toBeGreaterThan(ends[0]!);
      expect(key[2]!.word.at.x).toBeGreaterThan(ends[1]!);
    }
    expect(textsOf(first).map(({ text }) => text)).not.toContain('cut line');
  });

  test('what part it is, measured from where and which way', () => {
    const said = pages.map((shapes) =>
      textsOf(shapes)
        .map(({ text }) => text)
        .find((text) => text.includes('upper left corner')),
    );
    expect(said).toEqual([
      '0 to 277 across and 0 to 31.5 down, measured from the drawing’s upper left corner',
      '257 to 500 across and 0 to 31.5 down, measured from the drawing’s upper left corner',
    ]);
  });

  test('all of it lies under the tile, in the room that is reckoned for it', () => {
    const [tile] = tilesOf(laid.figure, ROOM, 0);
    for (const { at, text } of textsOf(first)) {
      expect(at.y, text).toBeLessThanOrEqual(22 + tileHeight(tile!));
    }
    const under = textsOf(first).filter(({ at }) => at.y > 22 + 31.5);
    expect(under.every(({ at, size }) => at.y - size >= 22 + 31.5)).toBe(true);
    expect(new Set(under.map(({ at }) => at.y)).size).toBe(3);
  });
});

describe('clipping', () => {
  const box = { from: { x: 0, y: 0 }, to: { x: 10, y: 10 } };

  test('keeps what is inside as it is, and cuts what leaves', () => {
    const inside = [
      { x: 1, y: 1 },
      { x: 9, y: 2 },
      { x: 5, y: 5 },
    ];
    expect(clipped(inside, box)).toEqual([inside]);
    expect(
      clipped(
        [
          { x: -5, y: 5 },
          { x: 15, y: 5 },
          { x: 5, y: 15 },
        ],
        box,
      ),
    ).toEqual([
      [
        { x: 0, y: 5 },
        { x: 10, y: 5 },
      ],
      // The second line only touches the corner's diagonal: x + y = 20.
      [
        { x: 10, y: 10 },
        { x: 10, y: 10 },
      ],
    ]);
    expect(
      clipped(
        [
          { x: 20, y: 0 },
          { x: 20, y: 10 },
        ],
        box,
      ),
    ).toEqual([]);
  });

  test('what is left lies in the box and on the line', () => {
    const near = fc.record({
      x: fc.double({ min: -20, max: 30, noNaN: true }),
      y: fc.double({ min: -20, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(near, { minLength: 2, maxLength: 6 }), (points) => {
        for (const at of clipped(points, box).flat()) {
          expect(Math.min(at.x, at.y)).toBeGreaterThan(-1e-9);
          expect(Math.max(at.x, at.y)).toBeLessThan(10 + 1e-9);
          expect(distance(at, segments(points))).toBeLessThan(1e-9);
        }
      }),
    );
  });
});
