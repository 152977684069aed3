import type { LaidOf, LaidOutline } from '../../garment/record/cloth-lay.ts';
import type { PieceForm } from '../../garment/record/piece-said.ts';
import { boxOf, type Outline, type Point } from '../../lay/outline.ts';
import { foldProblems } from '../../lay/pieces/on-fold.ts';
import { type PieceShape, pieceOutline } from '../../lay/pieces/piece-outline.ts';
import { type PieceOutcome, pieceUnless } from '../../lay/pieces/piece-problem.ts';
import { simplified } from '../../lay/pieces/simplify.ts';
import { inMm } from './lay-units.ts';

/** A piece as it is cut, in mm. */
export interface CutOutline {
  /** As it was entered: what is added lies outside it. */
  entered: Outline;
  exact: Outline;
  /** Around that, with as few corners as the search likes. */
  laid: Outline;
}

/** Pieces with an outline of their own, by id; or why one has none. */
export type CutOutlines = ReadonlyMap<string, PieceOutcome<CutOutline>>;

/** A form as the arithmetic of pieces takes it. */
function shapeOf(form: PieceForm): PieceShape {
  const rises = form.bows && { rises: form.bows.map(inMm) };
  if (form.kind === 'points') {
    const points = form.points.map(([x, y]): Point => [inMm(x), inMm(y)]);
    return { kind: 'points', points, ...rises };
  }
  const { long, top, bottom, slant } = form;
  return {
    kind: 'tapered',
    ...{ length: inMm(long), start: inMm(top), end: inMm(bottom) },
    slant: slant === 'both' ? 'both' : 'high',
    ...rises,
  };
}

/** An outline with what is added to it, as it is cut. */
async function cutOutline(
  { form, adds }: LaidOutline,
  fold: boolean,
): Promise<PieceOutcome<CutOutline>> {
  const sided = pieceOutline(shapeOf(form));
  if (!sided.ok) return sided;
  const entered = sided.value.outline;
  const floor = fold ? boxOf(entered).y0 : undefined;
  const cut = adds
    ? // What adds them weighs more than all else that is here.
      (await import('../../lay/pieces/allowance.ts')).withAllowances(
        sided.value,
        adds.map(inMm),
        fold,
      )
    : pieceUnless(fold ? foldProblems(entered) : [], () => ({ ok: true, value: entered }));
  if (!cut.ok) return cut;
  return { ok: true, value: { entered, exact: cut.value, laid: simplified(cut.value, floor) } };
}

/** The outlines of all that is to be laid and has one. */
export async function cutOutlines({ pieces }: Pick<LaidOf, 'pieces'>): Promise<CutOutlines> {
  const all = Object.entries(pieces).flatMap(([id, { outline, fold }]) =>
    outline ? [cutOutline(outline, fold).then((cut) => [id, cut] as const)] : [],
  );
  return new Map(await Promise.all(all));
}
