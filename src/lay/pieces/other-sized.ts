import { boxOf, type Outline } from '../outline.ts';

/** A curve's corners lie this far outside of it at either end, in mm. */
const NOTHING = 1.1;

/**
 * Whether an outline isn't as large as the piece is cut, by more than its curves' corners make.
 * @param long along the grain, in mm
 * @param wide across it, in mm: of a piece on the fold the half, as its outline is
 */
export function otherSized(outline: Outline, long: number, wide: number): boolean {
  const { x0, x1, y0, y1 } = boxOf(outline);
  return Math.abs(x1 - x0 - long) > NOTHING || Math.abs(y1 - y0 - wide) > NOTHING;
}
