import { convexSum } from './convex-sum.ts';
import { type Box, boxOf, type Outline } from './outline.ts';
import { type Edge, unionEdges } from './union-edges.ts';

/**
 * Where a piece may not lie: the places of its middle, seen from the middle of another piece, at
 * which the two overlap (the no-fit region).
 */
export interface Region {
  /** What it and the gap round it reach over. */
  box: Box;
  edges: readonly Edge[];
  /** The convex outlines that make it up. */
  sums: readonly Outline[];
}

/**
 * A grid over a region's box whose cells name the few edges that can be the nearest there, so that
 * how deep a place lies within is exact and costs one cell and one to three edges.
 */
export interface Grid {
  /** Side of a cell in mm, and how many lie side by side. */
  side: number;
  across: number;
  /** For each cell: 0 where it is free, else where its edges stand in `list`. */
  cells: Int32Array;
  /** For each cell that isn't free: 4 × how many edges + where it lies; then its edges. */
  list: readonly number[];
}

/** Where a cell lies: all within, on the outline, or all outside but nearer than the gap. */
export const WITHIN = 0;
export const ON_OUTLINE = 1;
const NEAR = 2;

/** Cells along the longer side of a region. */
const FINENESS = 20;
/** Cells are sorted out in blocks of so many by so many. */
const BLOCK = 4;

/**
 * @param still convex parts of the piece that lies
 * @param moving convex parts of the piece that is to be laid
 * @param gap least distance between the two, in mm, 0 or more; corners are rounded by it
 */
export function noFitRegion(
  still: readonly Outline[],
  moving: readonly Outline[],
  gap: number,
): Region {
  const opposite = moving.map((part) => part.map(([x, y]) => [-x, -y] as const));
  const sums = still.flatMap((part) => opposite.map((other) => convexSum(part, other)));
  const { x0, y0, x1, y1 } = boxOf(sums.flat());
  const box = { x0: x0 - gap, y0: y0 - gap, x1: x1 + gap, y1: y1 + gap };
  const edges = unionEdges(sums, Math.max(x1 - x0, y1 - y0) * 1e-10);
  return { box, edges, sums };
}

/** @param gap the least distance the region was made with */
export function gridOf({ box, edges, sums }: Region, gap: number): Grid {
  const side = Math.max(box.x1 - box.x0, box.y1 - box.y0) / FINENESS;
  const across = Math.floor((box.x1 - box.x0) / side) + 1;
  const up = Math.floor((box.y1 - box.y0) / side) + 1;
  const cells = new Int32Array(across * up);
  const list = [0];
  // Many cells lie nearest to one edge alone: they share what is said of it.
  const said = new Int32Array(edges.length * 4);
  const reach = side * Math.SQRT1_2 * 1.0001;
  const middle = (i: number, from: number, of: number) => from + (i + of / 2) * side;
  const inBlock = nearestOf(edges);
  const inCell = nearestOf(edges);
  const fill = (column: number, row: number) => {
    const [x, y] = [middle(column, box.x0, 1), middle(row, box.y0, 1)];
    inCell.take(inBlock, x, y, reach);
    const on = inCell.least <= reach;
    if (!on && inCell.least > reach + gap && !isInside(sums, x, y)) return;
    const where = on ? ON_OUTLINE : isInside(sums, x, y) ? WITHIN : NEAR;
    const at = row * across + column;
    const alone = inCell.count === 1 ? inCell.ids[0]! * 4 + where : -1;
    if (alone >= 0 && said[alone]! > 0) {
      cells[at] = said[alone]!;
      return;
    }
    if (alone >= 0) said[alone] = list.length;
    cells[at] = list.length;
    list.push(inCell.count * 4 + where);
    for (let k = 0; k < inCell.count; k++) list.push(inCell.ids[k]!);
  };
  const all = nearestOf(edges);
  all.takeAll();
  for (let row = 0; row < up; row += BLOCK) {
    for (let column = 0; column < across; column += BLOCK) {
      const [x, y] = [middle(column, box.x0, BLOCK), middle(row, box.y0, BLOCK)];
      inBlock.take(all, x, y, reach * BLOCK);
      for (let j = row; j < Math.min(up, row + BLOCK); j++) {
        for (let i = column; i < Math.min(across, column + BLOCK); i++) fill(i, j);
      }
    }
  }
  return { side, across, cells, list };
}

/** Some of the edges: those that can be the nearest to a place within reach of another. */
interface Nearest {
  ids: Int32Array;
  count: number;
  /** How far away the nearest is. */
  least: number;
  takeAll(): void;
  take(from: Nearest, x: number, y: number, reach: number): void;
}

function nearestOf(edges: readonly Edge[]): Nearest {
  const flat = Float64Array.from(edges.flat());
  const away = new Float64Array(edges.length);
  const some: Nearest = {
    ids: new Int32Array(edges.length),
    count: 0,
    least: Infinity,
    takeAll() {
      for (let k = 0; k < edges.length; k++) some.ids[k] = k;
      some.count = edges.length;
    },
    take(from, x, y, reach) {
      let least = Infinity;
      for (let k = 0; k < from.count; k++) {
        const far = distance(flat, 5 * from.ids[k]!, x, y);
        away[k] = far;
        if (far < least) least = far;
      }
      let count = 0;
      for (let k = 0; k < from.count; k++) {
        if (away[k]! <= least + 2 * reach) some.ids[count++] = from.ids[k]!;
      }
      some.count = count;
      some.least = least;
    },
  };
  return some;
}

/** How far a place is from the edge that stands at `o` among five numbers each. */
function distance(edges: Float64Array, o: number, x: number, y: number): number {
  const dx = x - edges[o]!;
  const dy = y - edges[o + 1]!;
  const ux = edges[o + 2]!;
  const uy = edges[o + 3]!;
  const along = dx * ux + dy * uy;
  const past = along < 0 ? along : Math.max(0, along - edges[o + 4]!);
  const aside = ux * dy - uy * dx;
  return Math.sqrt(past * past + aside * aside);
}

const isInside = (convex: readonly Outline[], x: number, y: number) =>
  convex.some((outline) => isWithin(outline, x, y));

function isWithin(convex: Outline, x: number, y: number): boolean {
  for (let i = 0; i < convex.length; i++) {
    const from = convex[i]!;
    const to = convex[i + 1 === convex.length ? 0 : i + 1]!;
    const turn = (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
    if (turn < 0) return false;
  }
  return true;
}
