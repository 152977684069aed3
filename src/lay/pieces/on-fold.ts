import { boxOf, type Outline, type Point } from '../outline.ts';
import type { PieceProblem } from './piece-problem.ts';

/** How far from straight a fold may be, in mm: what a file's digits leave. */
const FOLD_MM = 0.001;

/** Why a piece can't lie on the fold: it needs a straight way along its lowest edge. */
export function foldProblems(outline: Outline): PieceProblem[] {
  const { y0 } = boxOf(outline);
  const onIt = ([, y]: Point) => y - y0 <= FOLD_MM;
  const lies = outline.some((at, i) => onIt(at) && onIt(outline[(i + 1) % outline.length]!));
  return lies ? [] : [{ kind: 'no-fold' }];
}
