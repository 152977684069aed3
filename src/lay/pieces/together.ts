import { ClipType, FillRule, type Path64, PathType } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { boxOf, type Outline, type Point, signedArea } from '../outline.ts';

/** The library counts in whole numbers: a thousandth of a millimetre each. */
const PER_MM = 1000;

/**
 * Outlines of all that lies in at least one of the parts, counter-clockwise; those of holes
 * clockwise. Corners come within 0.001 mm of where they are.
 * @param floor what lies below this y is cut away
 */
export function together(parts: readonly Outline[], floor?: number): Outline[] {
  const clipper = new Clipper64();
  clipper.addPaths(parts.map(pathOf), PathType.Subject);
  if (floor !== undefined) clipper.addPath(pathOf(below(parts, floor)), PathType.Clip);
  const found: Path64[] = [];
  const what = floor === undefined ? ClipType.Union : ClipType.Difference;
  clipper.execute(what, FillRule.NonZero, found);
  return found.map((path) => path.map(({ x, y }): Point => [x / PER_MM, y / PER_MM]));
}

/** All one way round: a part that runs the other way would take away from those it lies over. */
function pathOf(outline: Outline): Path64 {
  const path = outline.map(([x, y]) => ({ x: Math.round(x * PER_MM), y: Math.round(y * PER_MM) }));
  return signedArea(outline) < 0 ? path.reverse() : path;
}

function below(parts: readonly Outline[], floor: number): Outline {
  const { x0, y0, x1 } = boxOf(parts.flat());
  const low = Math.min(y0, floor) - 1;
  return [
    [x0 - 1, low],
    [x1 + 1, low],
    [x1 + 1, floor],
    [x0 - 1, floor],
  ];
}
