import type { CornerPlan } from '../../drawing/hem-corner.ts';
import { toMm } from '../../lengths/length.ts';
import type { Mitre, MitreInput } from '../../sewing/hems/mitre.ts';

/** A mitred corner as it is drawn. */
export function drawnOf({ angle, edgeStitch, turned }: MitreInput, plan: Mitre): CornerPlan {
  return {
    bottom: toMm(plan.foldLines.bottom),
    side: toMm(plan.foldLines.side),
    angle,
    alongBottom: toMm(plan.alongBottom),
    upSide: toMm(plan.upSide),
    trim: toMm(plan.trim),
    edgeStitch: toMm(edgeStitch),
    turnedTwice: turned !== 'once',
  };
}
