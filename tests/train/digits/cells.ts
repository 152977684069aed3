import { NO_DIGIT } from '../../../src/tape/digits/network.ts';
import type { Random } from '../../tapes/random.ts';
import { digitPrint, variedPrint } from './digit-print.ts';
import type { Lettered } from './letter-masks.ts';
import { photographed } from './photographed.ts';
import type { Rubbish } from './rubbish.ts';
import { drawnView, type View } from './view.ts';

/** A cell, which of the eleven it is, and how it was photographed. */
export interface LabelledCell {
  readonly cell: Float32Array;
  readonly label: number;
  readonly view: View;
}

/** What cells are drawn from. */
export interface Source {
  readonly digits: readonly Lettered[];
  readonly letters: readonly Lettered[];
  readonly rubbish: readonly Rubbish[];
  readonly shareOfRubbish: number;
  /** A share of the digits in proportions of no typeface. */
  readonly varied?: number;
}

/** A cell drawn from a digit, or, in a share of them, from rubbish. */
export function drawnCell(source: Source, random: Random): LabelledCell {
  const digit = random.pick(source.digits);
  const view = drawnView(random);
  if (random.chance(source.shareOfRubbish)) {
    const print = random.pick(source.rubbish)(digit, random.pick(source.letters), random);
    return { cell: photographed(print, view, random), label: NO_DIGIT, view };
  }
  const label = random.whole(0, 9);
  const print = random.chance(source.varied ?? 0) ? variedPrint : digitPrint;
  return { cell: photographed(print(label, digit, random), view, random), label, view };
}
