import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pieceDrawing } from '../../src/calculations/piece/drawing.ts';
import { pieceFields } from '../../src/calculations/piece/fields.ts';
import type { Point } from '../../src/drawing/figure.ts';
import { benchOf } from '../controls/helpers.ts';

const bench = benchOf();
const lean = fc.integer({ min: -8, max: 8 });

/** How far a point lies off the line through two others, in mm. */
function off(point: Point, from: Point, to: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  return Math.abs(x * (point.y - from.y) - y * (point.x - from.x)) / Math.hypot(x, y);
}

// What is written on it is measured on it: lengths, and of the outline each allowance, square to its edge.
test('edges that slant each by itself are drawn as they are written, and measure back', () => {
  fc.assert(
    fc.property(
      fc.record({ top: lean, bottom: lean, side: lean, other: lean, fold: fc.boolean() }),
      ({ top, bottom, side, other, fold }) => {
        const set = {
          ...{ slants: 'own', topFalls: `${top}`, topOver: '40', bottomRises: `${bottom}` },
          ...{ bottomOver: '40', sideLeans: `${side}`, sideOver: '60', otherLeans: `${other}` },
          ...{ otherOver: '60', fold: fold ? 'side' : 'none', sides: 'different', otherSide: '2' },
        };
        const draft = { ...pieceFields.asked.start(bench), ...set };
        const drawn = pieceDrawing.draw(draft, bench);
        if (!drawn) throw new Error('not drawn');
        expect(drawn.toScale).toBe(true);
        for (const { text, from, to } of drawn.dimensions) {
          if (!text.endsWith(' cm')) continue;
          expect(Math.hypot(to.x - from.x, to.y - from.y), text).toBeCloseTo(
            10 * Math.abs(Number.parseFloat(text.replace('−', '-'))),
            1,
          );
        }
        const lines = (style: string) =>
          drawn.shapes.flatMap((one) => ('line' in one && one.line === style ? [one.points] : []));
        const [cut = [], finished = []] = [lines('cut')[0], lines('stitch')[0]];
        // On the fold the line begins and ends there, and its corners are the side's; else round from the bottom.
        const [a, b, c, d] = [0, 1, 2, 3].map((i) => finished[i] as Point) as [
          Point,
          Point,
          Point,
          Point,
        ];
        // Another road: over so much and by so much from where an edge begins comes back to that edge.
        const ends = (field: string) =>
          drawn.dimensions.flatMap(({ by, to }) =>
            'given' in by && by.given === field ? [to] : [],
          );
        const sides = fold ? [b, c] : [d, a];
        const edges: [string, Point, Point, number][] = [
          ['topFalls', c, d, 1],
          ['bottomRises', a, b, 1],
          ['sideLeans', sides[0] as Point, sides[1] as Point, 1],
          ['otherLeans', b, c, fold ? 0 : 1],
        ];
        for (const [field, from, to, many] of edges) {
          expect(ends(field), field).toHaveLength(many);
          for (const at of ends(field)) expect(off(at, from, to), field).toBeCloseTo(0, 3);
        }
        const [low, high] = fold ? [1, 2] : [0, 3];
        const edge = fold ? ([b, c] as const) : ([a, d] as const);
        for (const at of [low, high]) expect(off(cut[at] as Point, ...edge)).toBeCloseTo(15, 3);
        for (const at of [0, 1]) expect(off(cut[at] as Point, a, b)).toBeCloseTo(40, 3);
        for (const at of [2, 3]) expect(off(cut[at] as Point, c, d)).toBeCloseTo(15, 3);
        if (fold) return;
        for (const at of [1, 2]) expect(off(cut[at] as Point, b, c)).toBeCloseTo(20, 3);
      },
    ),
    { seed: 1531, numRuns: 200 },
  );
});
