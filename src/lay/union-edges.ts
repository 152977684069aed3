import { type Box, boxOf, type Outline, signedArea } from './outline.ts';

/** A straight stretch of an outline: where it begins, its direction (of length 1), how long. */
export type Edge = readonly [x: number, y: number, ux: number, uy: number, length: number];

/** What of an edge is kept, as distances from where it begins. */
type Stretch = readonly [from: number, to: number];

interface Part {
  box: Box;
  edges: readonly Edge[];
}

/**
 * The outline of all the convex parts together, as loose edges with the inside on their left:
 * every part's edges, less what of them lies within another part.
 * @param eps what counts as touching, in mm
 */
export function unionEdges(outlines: readonly Outline[], eps: number): Edge[] {
  // The largest first: an edge within the whole is dropped after a few of them.
  const parts = [...outlines]
    .sort((a, b) => signedArea(b) - signedArea(a))
    .map((outline): Part => ({ box: boxOf(outline), edges: edgesOf(outline, eps) }));
  return parts.flatMap((part, place) =>
    part.edges.flatMap((edge) =>
      outside(edge, place, parts, eps)
        // Crumbs left by the tolerance at corners would tell a false side.
        .filter(([from, to]) => to - from > eps * 1000)
        .map(([from, to]): Edge => {
          const [x, y, ux, uy] = edge;
          return [x + ux * from, y + uy * from, ux, uy, to - from];
        }),
    ),
  );
}

function edgesOf(outline: Outline, eps: number): Edge[] {
  return outline
    .map(([x, y], i): Edge => {
      const [u, v] = outline[(i + 1) % outline.length]!;
      const length = Math.hypot(u - x, v - y);
      return [x, y, (u - x) / length, (v - y) / length, length];
    })
    .filter(([, , , , length]) => length > eps);
}

/** What of an edge of one part lies in no other part. */
function outside(edge: Edge, place: number, parts: readonly Part[], eps: number): Stretch[] {
  const [x, y, ux, uy, length] = edge;
  const [endX, endY] = [x + ux * length, y + uy * length];
  let kept: Stretch[] = [[0, length]];
  for (let other = 0; other < parts.length && kept.length; other++) {
    if (other === place) continue;
    const { box, edges } = parts[other]!;
    if (Math.max(x, endX) < box.x0 || Math.min(x, endX) > box.x1) continue;
    if (Math.max(y, endY) < box.y0 || Math.min(y, endY) > box.y1) continue;
    const [from, to] = within(edge, edges, place < other, eps);
    if (to - from > eps) kept = less(kept, from, to, eps);
  }
  return kept;
}

/**
 * What of an edge lies within a convex part. Along a line of both, opposite seams vanish, and of
 * equal ones that of the first part alone stays.
 */
function within(edge: Edge, part: readonly Edge[], isFirst: boolean, eps: number): Stretch {
  const [x, y, ux, uy, length] = edge;
  let from = 0;
  let to = length;
  for (const [px, py, vx, vy] of part) {
    if (from >= to) break;
    const begins = vx * (y - py) - vy * (x - px);
    const ends = begins + length * (vx * uy - vy * ux);
    if (begins > eps && ends > eps) continue;
    if (begins <= eps && ends <= eps) {
      const along = begins >= -eps && ends >= -eps;
      if (!along || (isFirst && vx * ux + vy * uy > 0)) to = from;
      continue;
    }
    // Cut where they truly cross, not at the tolerance.
    const crossing = (length * begins) / (begins - ends);
    if (begins <= eps) from = Math.max(from, crossing);
    else to = Math.min(to, crossing);
  }
  return [from, to];
}

function less(kept: readonly Stretch[], from: number, to: number, eps: number): Stretch[] {
  return kept.flatMap(([begin, end]): Stretch[] => {
    if (to <= begin || from >= end) return [[begin, end]];
    const before: Stretch[] = from - begin > eps ? [[begin, from]] : [];
    return end - to > eps ? [...before, [to, end]] : before;
  });
}
