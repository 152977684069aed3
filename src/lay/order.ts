import type { Problem } from './problem.ts';

/** How much room a piece asks for: its area, and more where it is long. */
function sizeOf({ kinds, pieces, shapes }: Problem, piece: number): number {
  const kind = kinds[pieces[piece]!]!;
  const box = shapes[kind.shapes[0] ?? -1]?.box;
  const longest = box ? Math.max(box.x1 - box.x0, box.y1 - box.y0) : 0;
  return kind.area + 0.3 * longest ** 2;
}

/** The pieces that move, the largest first. */
export const inOrderOfSize = (problem: Problem, by = (size: number) => size): number[] => {
  const sizes = Array.from({ length: problem.moving }, (_, i) => by(sizeOf(problem, i)));
  return sizes.map((_, i) => i).sort((a, b) => sizes[b]! - sizes[a]!);
};

/** Nearly by size: each a little larger or smaller than it is. */
export const jittered = (problem: Problem, random: () => number) =>
  inOrderOfSize(problem, (size) => size * (0.7 + 0.6 * random()));
