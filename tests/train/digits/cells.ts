import { NO_DIGIT } from '../../../src/tape/digits/network.ts';
import type { Random } from '../../tapes/random.ts';
import { digitPrint } from './digit-print.ts';
import type { Lettered } from './letter-masks.ts';
import { photographed } from './photographed.ts';
import type { Rubbish } from './rubbish.ts';

/** A cell, and which of the eleven it is. */
export interface LabelledCell {
  readonly cell: Float32Array;
  readonly label: number;
}

/** A cell drawn from a digit, or, in a share of them, from rubbish. */
export function drawnCell(
  letters: readonly Lettered[],
  rubbish: readonly Rubbish[],
  shareOfRubbish: number,
  random: Random,
): LabelledCell {
  const letter = random.pick(letters);
  if (random.chance(shareOfRubbish)) {
    const print = random.pick(rubbish)(letter, random);
    return { cell: photographed(print, random), label: NO_DIGIT };
  }
  const label = random.whole(0, 9);
  return { cell: photographed(digitPrint(label, letter, random), random), label };
}
