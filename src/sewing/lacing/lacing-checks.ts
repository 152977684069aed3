import { type ExactLength, exactLength, type Length, LONGEST, mm } from '../../lengths/length.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import type { LacingInput } from './lacing-input.ts';

/** The most holes that are laced in one row. */
const MOST_HOLES = 2000;
/** No layers a hand laces are thicker. Ours, no source. */
const THICKEST = mm(30);

/** Every reason why there is no lacing, each with its field. */
export function lacingProblems(input: LacingInput): Problem[] {
  const { holes, pitch, margin, thickness, outside, tail, longest, lace } = input;
  const alone = [
    ...mustBeCount('holes', holes, 2, MOST_HOLES),
    ...mustBePositive('pitch', pitch),
    ...mustBePositive('margin', margin),
    ...mustBePositive('thickness', thickness),
    ...mustBePositiveIfGiven('lace', lace),
    ...mustNotBeNegative('outside', outside),
    ...mustNotBeNegative('tail', tail),
    ...mustBePositive('longest', longest),
  ];
  if (alone.length > 0) return alone;
  // So that the whole row, and what is drawn of it, stays a length.
  const most = exactLength(LONGEST / holes);
  return [
    ...notOver('pitch', pitch, most),
    ...notOver('margin', margin, most),
    ...notOver('outside', outside, most),
    ...notOver('lace', lace ?? margin, most),
    // Thicker than two pitches, the hole leans so far that no lace is drawn through.
    ...notOver('thickness', thickness, Math.min(2 * pitch, THICKEST) as ExactLength),
  ];
}

function notOver(field: string, given: Length, most: ExactLength): Problem[] {
  return given > most ? [{ kind: 'too-long', field, most, given }] : [];
}
