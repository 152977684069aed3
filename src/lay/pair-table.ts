import { type Grid, gridOf, noFitRegion, type Region } from './region.ts';
import type { Kind, Shape } from './shapes.ts';

/**
 * The regions of all pairs of shapes in a few long arrays, so that the search touches no object.
 * Of a pair (still a, moving b) everything lies at a × shapes + b.
 */
export interface PairTable {
  shapes: number;
  /** Which region a pair has, and whether it is seen as it is (1) or turned by half (−1). */
  region: Int32Array;
  sign: Int8Array;
  /** The region's box as this pair sees it. */
  x0: Float64Array;
  y0: Float64Array;
  x1: Float64Array;
  y1: Float64Array;
  /** Its two sides together. */
  wide: Float64Array;
  /** Of each region, and one more: its first edge. */
  firstEdge: Int32Array;
  /** Five numbers an edge: where it begins, its direction, its length. */
  edges: Float64Array;
  regions: readonly Region[];
}

/** The grids of all regions. Made later than the outlines, with which a first lay is found. */
export interface Grids {
  /** Of each region: corner of its grid, cells per mm, cells side by side, its first cell. */
  x: Float64Array;
  y: Float64Array;
  perMm: Float64Array;
  across: Int32Array;
  firstCell: Int32Array;
  cells: Int32Array;
  /** As a grid's own, each edge by where it stands among all numbers of all edges. */
  list: Int32Array;
}

export function pairTable(
  shapes: readonly Shape[],
  kinds: readonly Kind[],
  gap: number,
): PairTable {
  const count = shapes.length;
  const half = shapes.map((shape) => halfTurned(shape, shapes, kinds));
  const region = new Int32Array(count * count).fill(-1);
  const sign = new Int8Array(count * count);
  const regions: Region[] = [];
  const say = (still: number, moving: number, seen: number) => {
    const pair = still * count + moving;
    if (region[pair]! >= 0) return;
    region[pair] = regions.length;
    sign[pair] = seen;
  };
  for (let a = 0; a < count; a++) {
    for (let b = 0; b < count; b++) {
      if (region[a * count + b]! >= 0) continue;
      // The other way round, and both turned by half, it is the same region turned by half.
      say(a, b, 1);
      say(b, a, -1);
      if (half[a]! >= 0 && half[b]! >= 0) {
        say(half[a]!, half[b]!, -1);
        say(half[b]!, half[a]!, 1);
      }
      regions.push(noFitRegion(shapes[a]!.parts, shapes[b]!.parts, gap));
    }
  }
  const edges = Float64Array.from(regions.flatMap((one) => one.edges.flat()));
  const firstEdge = startsOf(regions.map((one) => one.edges.length));
  return {
    shapes: count,
    region,
    sign,
    ...boxes(regions, region, sign),
    firstEdge,
    edges,
    regions,
  };
}

/** The shape that is this one turned by half, or −1. */
function halfTurned(shape: Shape, shapes: readonly Shape[], kinds: readonly Kind[]): number {
  const { onFold, shapes: own } = kinds[shape.kind]!;
  if (onFold) return -1;
  const isHalf = (one: number) => Math.abs(Math.abs(shapes[one]!.turn - shape.turn) - 180) < 1e-9;
  return own.find(isHalf) ?? -1;
}

function boxes(regions: readonly Region[], region: Int32Array, sign: Int8Array) {
  const side = (pick: (region: Region, asItIs: boolean) => number) =>
    Float64Array.from(region, (id, pair) => pick(regions[id]!, sign[pair]! > 0));
  return {
    x0: side(({ box }, asItIs) => (asItIs ? box.x0 : -box.x1)),
    x1: side(({ box }, asItIs) => (asItIs ? box.x1 : -box.x0)),
    y0: side(({ box }, asItIs) => (asItIs ? box.y0 : -box.y1)),
    y1: side(({ box }, asItIs) => (asItIs ? box.y1 : -box.y0)),
    wide: side(({ box }) => box.x1 - box.x0 + box.y1 - box.y0),
  };
}

/** Where each begins of things of these lengths laid end to end, and where the last ends. */
function startsOf(lengths: readonly number[]): Int32Array {
  const starts = new Int32Array(lengths.length + 1);
  lengths.forEach((length, i) => {
    starts[i + 1] = starts[i]! + length;
  });
  return starts;
}

/** @param gap the least distance the table was made with */
export function gridsOf({ regions, firstEdge }: PairTable, gap: number): Grids {
  const grids = regions.map((region) => gridOf(region, gap));
  const firstCell = startsOf(grids.map((one) => one.cells.length));
  const firstPlace = startsOf(grids.map((one) => one.list.length));
  const cells = new Int32Array(firstCell[grids.length]!);
  // Nothing stands at 0: there a cell points that is free.
  const list = new Int32Array(firstPlace[grids.length]! + 1);
  grids.forEach((grid, i) => {
    const start = firstPlace[i]! + 1;
    cells.set(
      grid.cells.map((at) => (at ? at + start : 0)),
      firstCell[i]!,
    );
    list.set(pointing(grid, firstEdge[i]!), start);
  });
  return {
    x: Float64Array.from(regions, ({ box }) => box.x0),
    y: Float64Array.from(regions, ({ box }) => box.y0),
    perMm: Float64Array.from(grids, ({ side }) => 1 / side),
    across: Int32Array.from(grids, ({ across }) => across),
    ...{ firstCell, cells, list },
  };
}

function pointing({ list }: Grid, firstEdge: number): number[] {
  const all = [...list];
  for (let at = 1; at < all.length; ) {
    const count = all[at]! >> 2;
    for (let i = at + 1; i <= at + count; i++) all[i] = (firstEdge + all[i]!) * 5;
    at += count + 1;
  }
  return all;
}
