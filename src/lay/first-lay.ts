import type { Places } from './field.ts';
import { latticeOf, onLattice, type Range, rangeOf } from './lattice.ts';
import type { Problem } from './problem.ts';

/** Heights at which each piece is tried. */
const HEIGHTS = 48;

interface Bench extends Places {
  problem: Problem;
}

interface Place {
  end: number;
  x: number;
  y: number;
  shape: number;
}

/**
 * A first lay: the pieces in this order, each where, of all heights and ways it may be turned, its
 * end lies farthest left. Leaves the lay in the places.
 * @returns the length used, or Infinity when a piece fits nowhere
 */
export function firstLay(problem: Problem, places: Places, order: readonly number[]): number {
  const laid = problem.fixed.map((_, i) => problem.moving + i);
  let length = 0;
  for (const piece of order) {
    const best: Place = { end: Infinity, x: 0, y: 0, shape: -1 };
    for (const shape of problem.kinds[problem.pieces[piece]!]!.shapes) {
      tryHeights({ problem, ...places }, laid, shape, best);
    }
    if (best.shape < 0) return Infinity;
    places.x[piece] = best.x;
    places.y[piece] = best.y;
    places.shape[piece] = best.shape;
    laid.push(piece);
    length = Math.max(length, best.end);
  }
  return length;
}

function tryHeights(field: Bench, laid: readonly number[], shape: number, best: Place): void {
  const { problem } = field;
  const own = problem.shapes[shape]!;
  const range: Range = { x0: 0, y0: 0, x1: 0, y1: 0 };
  rangeOf(problem, own, Infinity, range);
  const { stepX, stepY, startX, startY } = latticeOf(problem, own);
  const rows = range.y1 > range.y0 ? HEIGHTS : 0;
  for (let row = 0; row <= rows; row++) {
    const wanted = rows ? range.y0 + (range.y1 - range.y0) * (row / rows) : range.y0;
    const y = onLattice(wanted, stepY, startY, range.y0, range.y1, 0);
    if (Number.isNaN(y)) return;
    const up = (x: number) =>
      stepX > 0 ? startX + Math.ceil((x - startX) / stepX - 1e-9) * stepX : x;
    const x = leftmost(blocked(field, laid, shape, y), up(range.x0), up, 1e-8 * problem.width);
    if (x + own.box.x1 < best.end) Object.assign(best, { end: x + own.box.x1, x, y, shape });
  }
}

type Stretch = readonly [from: number, to: number];

/** The first place from here on that no stretch holds. */
function leftmost(
  stretches: readonly Stretch[],
  from: number,
  up: (x: number) => number,
  beside: number,
): number {
  const inTurn = [...stretches].sort((a, b) => a[0] - b[0]);
  let x = from;
  for (const [low, high] of inTurn) if (x > low && x < high) x = up(high + beside);
  // On a lattice a step may jump over one stretch into another that began before it.
  const held = inTurn.some(([low, high]) => x > low && x < high);
  return held ? leftmost(stretches, x, up, beside) : x;
}

/** On one height the stretches where a shape would meet a piece that lies, each as one stretch. */
function blocked(field: Bench, laid: readonly number[], shape: number, y: number): Stretch[] {
  const { table } = field.problem;
  return laid.flatMap((other): Stretch[] => {
    const pair = field.shape[other]! * table.shapes + shape;
    const above = y - field.y[other]!;
    if (above <= table.y0[pair]! || above >= table.y1[pair]!) return [];
    const sign = table.sign[pair]!;
    const found = crossings(field, table.region[pair]!, sign * above);
    if (!found) return [];
    const [from, to] = sign > 0 ? found : [-found[1], -found[0]];
    const { gap } = field.problem;
    return [[field.x[other]! + from - gap, field.x[other]! + to + gap]];
  });
}

/** The first and last place at which a region's outline crosses a height. */
function crossings({ problem }: Bench, region: number, y: number): Stretch | undefined {
  const { edges, firstEdge } = problem.table;
  const { gap } = problem;
  let from = Infinity;
  let to = -Infinity;
  for (let o = firstEdge[region]! * 5; o < firstEdge[region + 1]! * 5; o += 5) {
    const y0 = edges[o + 1]!;
    const y1 = y0 + edges[o + 3]! * edges[o + 4]!;
    // With a gap, whatever comes within it counts.
    if ((y0 < y - gap && y1 < y - gap) || (y0 > y + gap && y1 > y + gap)) continue;
    const x0 = edges[o]!;
    const x1 = x0 + edges[o + 2]! * edges[o + 4]!;
    const level = gap > 0 || y0 === y1;
    const x = level ? x0 : x0 + (x1 - x0) * ((y - y0) / (y1 - y0));
    from = Math.min(from, x, level ? x1 : x);
    to = Math.max(to, x, level ? x1 : x);
  }
  return from <= to ? [from, to] : undefined;
}
