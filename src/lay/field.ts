import { ranksOf } from './heaviest-first.ts';
import { type Grids, gridsOf } from './pair-table.ts';
import type { Problem } from './problem.ts';
import { ON_OUTLINE, WITHIN } from './region.ts';

/** What a place holds besides its cost: each piece that is hit, how deep, and the way out. */
export interface Hits {
  count: number;
  piece: Int32Array;
  depth: Float64Array;
  outX: Float64Array;
  outY: Float64Array;
}

/** Where each piece of a problem lies, and in which shape. */
export interface Places {
  x: Float64Array;
  y: Float64Array;
  shape: Int32Array;
}

/**
 * A lay in hand, and what a place would cost in it: the sum over all other pieces of how deep the
 * place lies in their region, weighted. Nothing is made in the inner loop, and numbers travel
 * through `io`, as an engine boxes every number handed to a function that it does not inline.
 */
export interface Field extends Places {
  problem: Problem;
  /** In: place x, y, and the cost above which it may stop. Out: the cost. */
  io: Float64Array;
  hits: Hits;
  /** Makes ready to ask for places of a piece in one of its shapes. */
  prepare(piece: number, shape: number, weights: Float64Array): void;
  /** Of the others only those that reach into this window count, until made ready anew. */
  within(x0: number, y0: number, x1: number, y1: number): void;
  /** The cost of the place in `io`. */
  cost(): void;
  /** The cost of the place in `io`, whole, and what it hits. */
  probe(): void;
  /** How deep two pieces lie in each other, in mm; 0 when they don't. */
  depthOf(piece: number, other: number): number;
}

/** Distances nearer than this share of the width are taken for the same. */
const SAME = 1e-10;
/** At a corner both its edges are as near: within this they are, and the one faced tells. */
const [LESS, MORE] = [1 - 1e-6, 1 + 1e-6];

/** Columns the strip is parted into: a place is only asked about against what reaches into its own. */
const COLUMNS = 16;

/** The others as the piece in hand sees them. */
function room(count: number) {
  const floats = () => new Float64Array(count);
  const ints = () => new Int32Array(count);
  return {
    count: 0,
    ...{ piece: ints(), region: ints(), sign: floats(), x: floats(), y: floats() },
    ...{ weight: floats(), x0: floats(), y0: floats(), x1: floats(), y1: floats() },
    /** Of each column which of them count, from `count` × its place on, and how many these are. */
    counted: new Int32Array(count * COLUMNS),
    some: new Int32Array(COLUMNS),
    /** Where the first column begins, and columns per mm: none where all is one column. */
    columns: new Float64Array(2),
  };
}

type Others = ReturnType<typeof room>;

/** The column of a place; what lies before the first or behind the last is in that. */
function columnOf({ columns }: Others, x: number): number {
  const at = ((x - columns[0]!) * columns[1]!) | 0;
  return at < 0 ? 0 : at >= COLUMNS ? COLUMNS - 1 : at;
}

/** Parts the others into columns by where they reach along the strip. */
function part(others: Others, each: number): void {
  const { count, x0, x1, counted, some, columns } = others;
  let [from, to] = [Infinity, -Infinity];
  for (let k = 0; k < count; k++) {
    if (x0[k]! < from) from = x0[k]!;
    if (x1[k]! > to) to = x1[k]!;
  }
  columns[0] = from;
  columns[1] = to > from ? COLUMNS / (to - from) : 0;
  some.fill(0);
  for (let k = 0; k < count; k++) {
    const last = columnOf(others, x1[k]!);
    for (let column = columnOf(others, x0[k]!); column <= last; column++) {
      counted[column * each + some[column]!] = k;
      some[column] = some[column]! + 1;
    }
  }
}

/** The places of a problem, with what stays where it stays. */
export function placesOf({ pieces, moving, fixed }: Problem): Places {
  const x = new Float64Array(pieces.length);
  const y = new Float64Array(pieces.length);
  const shape = new Int32Array(pieces.length);
  fixed.forEach((one, i) => {
    x[moving + i] = one.x;
    y[moving + i] = one.y;
    shape[moving + i] = one.shape;
  });
  return { x, y, shape };
}

export function fieldOf(problem: Problem, { x, y, shape }: Places = placesOf(problem)): Field {
  const count = problem.pieces.length;
  const { table, gap } = problem;
  const grids = gridsOf(table, gap);
  const io = new Float64Array(4);
  const hits: Hits = {
    count: 0,
    piece: new Int32Array(count),
    depth: new Float64Array(count),
    outX: new Float64Array(count),
    outY: new Float64Array(count),
  };
  const others = room(count);
  const ranks = ranksOf(count);
  const heft = new Float64Array(count);
  const depth = depthIn(table.edges, grids, gap, (SAME * problem.width) ** 2);

  /** What counts most comes first: most places are given up before the rest is asked about. */
  const rank = (piece: number, own: number, weights: Float64Array) => {
    for (let k = 0; k < count; k++) {
      const wide = table.wide[shape[k]! * table.shapes + own]!;
      heft[k] = weights[piece * count + k]! * wide;
    }
    ranks.sort(piece, heft);
  };

  const prepare = (piece: number, own: number, weights: Float64Array) => {
    rank(piece, own, weights);
    const first = piece * (count - 1);
    for (let n = 0; n < count - 1; n++) {
      const k = ranks.ranked[first + n]!;
      const pair = shape[k]! * table.shapes + own;
      others.piece[n] = k;
      others.region[n] = table.region[pair]!;
      others.sign[n] = table.sign[pair]!;
      others.x[n] = x[k]!;
      others.y[n] = y[k]!;
      others.weight[n] = weights[piece * count + k]!;
      others.x0[n] = x[k]! + table.x0[pair]!;
      others.x1[n] = x[k]! + table.x1[pair]!;
      others.y0[n] = y[k]! + table.y0[pair]!;
      others.y1[n] = y[k]! + table.y1[pair]!;
    }
    others.count = count - 1;
    part(others, count);
  };

  const within = (x0: number, y0: number, x1: number, y1: number) => {
    let n = 0;
    for (let k = 0; k < others.count; k++) {
      const beside = x1 <= others.x0[k]! || x0 >= others.x1[k]!;
      if (!beside && y1 > others.y0[k]! && y0 < others.y1[k]!) others.counted[n++] = k;
    }
    others.some[0] = n;
    others.columns[1] = 0;
  };

  const depthOf = (piece: number, other: number) => {
    const pair = shape[other]! * table.shapes + shape[piece]!;
    const [dx, dy] = [x[piece]! - x[other]!, y[piece]! - y[other]!];
    if (dx <= table.x0[pair]! || dx >= table.x1[pair]!) return 0;
    if (dy <= table.y0[pair]! || dy >= table.y1[pair]!) return 0;
    const sign = table.sign[pair]!;
    return depth.at(table.region[pair]!, sign * dx, sign * dy);
  };

  const probe = () => {
    const [px, py] = [io[0]!, io[1]!];
    let sum = 0;
    let n = 0;
    const column = columnOf(others, px);
    const end = column * count + others.some[column]!;
    for (let q = column * count; q < end; q++) {
      const k = others.counted[q]!;
      if (px <= others.x0[k]! || px >= others.x1[k]!) continue;
      if (py <= others.y0[k]! || py >= others.y1[k]!) continue;
      const sign = others.sign[k]!;
      const deep = depth.at(
        others.region[k]!,
        sign * (px - others.x[k]!),
        sign * (py - others.y[k]!),
      );
      if (deep <= 0) continue;
      sum += others.weight[k]! * deep;
      depth.wayOut();
      hits.piece[n] = others.piece[k]!;
      hits.depth[n] = deep;
      hits.outX[n] = sign * depth.out[0]!;
      hits.outY[n] = sign * depth.out[1]!;
      n++;
    }
    hits.count = n;
    io[3] = sum;
  };

  const cost = costIn(problem, grids, others, io);
  return { problem, x, y, shape, io, hits, prepare, within, cost, probe, depthOf };
}

/** The cost of a place alone: the loop in which nearly all of the time is spent. */
function costIn(
  { pieces, table, gap, width }: Problem,
  grids: Grids,
  others: Others,
  io: Float64Array,
) {
  const { edges } = table;
  const { cells, list, x: gridX, y: gridY, perMm, across, firstCell } = grids;
  const same = (SAME * width) ** 2;
  const { counted, some, x0, x1, y0, y1 } = others;
  const each = pieces.length;
  return () => {
    const x = io[0]!;
    const y = io[1]!;
    const most = io[2]!;
    let sum = 0;
    const column = columnOf(others, x);
    const end = column * each + some[column]!;
    for (let q = column * each; q < end; q++) {
      const k = counted[q]!;
      if (x <= x0[k]! || x >= x1[k]! || y <= y0[k]! || y >= y1[k]!) continue;
      const region = others.region[k]!;
      const sign = others.sign[k]!;
      const lx = sign * (x - others.x[k]!);
      const ly = sign * (y - others.y[k]!);
      const per = perMm[region]!;
      const row = ((ly - gridY[region]!) * per) | 0;
      const column = ((lx - gridX[region]!) * per) | 0;
      const start = cells[firstCell[region]! + row * across[region]! + column]!;
      if (start === 0) continue;
      const head = list[start]!;
      let nearest = 1e300;
      let side = 0;
      for (let j = start + 1, end = start + (head >> 2); j <= end; j++) {
        const o = list[j]!;
        const dx = lx - edges[o]!;
        const dy = ly - edges[o + 1]!;
        const ux = edges[o + 2]!;
        const uy = edges[o + 3]!;
        const length = edges[o + 4]!;
        const along = dx * ux + dy * uy;
        const aside = ux * dy - uy * dx;
        const past = along < 0 ? along : along > length ? along - length : 0;
        const far = aside * aside + past * past;
        const tie = far <= nearest * MORE + same && aside * aside > side * side;
        if (far < nearest * LESS - same || tie) {
          nearest = far;
          side = aside;
        }
      }
      const away = Math.sqrt(nearest);
      const where = head & 3;
      const inside = where === WITHIN || (where === ON_OUTLINE && side > 0);
      const deep = inside ? away + gap : gap - away;
      if (deep <= 0) continue;
      sum += others.weight[k]! * deep;
      if (sum > most) break;
    }
    io[3] = sum;
  };
}

/** How deep a place lies in a region, and the way out of it. */
function depthIn(edges: Float64Array, grids: Grids, gap: number, same: number) {
  const { cells, list, x: gridX, y: gridY, perMm, across, firstCell } = grids;
  const out = new Float64Array(2);
  // What was asked last: place, way along the edge, and how far away it is; an engine boxes what a closure holds.
  const asked = new Float64Array(4);
  let edge = 0;
  let inside = false;

  /** In mm, the gap included; 0 where it is free. */
  const at = (region: number, lx: number, ly: number): number => {
    const per = perMm[region]!;
    const row = ((ly - gridY[region]!) * per) | 0;
    const column = ((lx - gridX[region]!) * per) | 0;
    const start = cells[firstCell[region]! + row * across[region]! + column]!;
    if (start === 0) return 0;
    const head = list[start]!;
    let nearest = Infinity;
    let side = 0;
    let along = 0;
    for (let j = start + 1, end = start + (head >> 2); j <= end; j++) {
      const o = list[j]!;
      const dx = lx - edges[o]!;
      const dy = ly - edges[o + 1]!;
      const ux = edges[o + 2]!;
      const uy = edges[o + 3]!;
      const on = dx * ux + dy * uy;
      const aside = ux * dy - uy * dx;
      const past = on < 0 ? on : Math.max(0, on - edges[o + 4]!);
      const far = aside * aside + past * past;
      const tie = far <= nearest * MORE + same && Math.abs(aside) > Math.abs(side);
      if (far < nearest * LESS - same || tie) {
        nearest = far;
        side = aside;
        edge = o;
        along = on;
      }
    }
    const away = Math.sqrt(nearest);
    asked[0] = lx;
    asked[1] = ly;
    asked[2] = along;
    asked[3] = away;
    inside = (head & 3) === WITHIN || ((head & 3) === ON_OUTLINE && side > 0);
    return Math.max(0, inside ? away + gap : gap - away);
  };

  /** The shortest way out of the place asked for last, of length 1, into `out`. */
  const wayOut = () => {
    const ux = edges[edge + 2]!;
    const uy = edges[edge + 3]!;
    const length = edges[edge + 4]!;
    const along = asked[2]!;
    const away = asked[3]!;
    if ((along >= 0 && along <= length) || away < 1e-300) {
      out[0] = uy;
      out[1] = -ux;
      return;
    }
    const end = along < 0 ? 0 : length;
    const towards = inside ? 1 / away : -1 / away;
    out[0] = (edges[edge]! + end * ux - asked[0]!) * towards;
    out[1] = (edges[edge + 1]! + end * uy - asked[1]!) * towards;
  };
  return { at, wayOut, out };
}
