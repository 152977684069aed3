import { turnedWords as turned } from '#words/common/turned-words.ts';
import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { foldShare } from '../sewing/hems/hem-folds.ts';
import type { Bench } from './bench.ts';
import type { Working } from './calculation.ts';
import { exactly } from './tape-text.ts';

/** π/2, as it stands in a formula. */
const HALF_PI = '1.5708';

/** How much a fold adds, in numbers. */
export function foldWorking(thickness: Length, layers: 0 | 1, bench: Bench): Working {
  const say = layers === 0 ? turned.foldAlone : turned.foldOver;
  const share = exactly(foldShare(thickness, layers), bench);
  return {
    formula: say(HALF_PI.replace('.', bench.decimalMark), exactly(thickness, bench), share),
    source: turned.foldSource,
  };
}

/** Half of what a fold adds, in numbers: of it a press line is that much nearer or further. */
export function halfFoldWorking(half: ExactLength, bench: Bench): Working {
  const formula = turned.halfOf(exactly(exactLength(2 * half), bench), exactly(half, bench));
  return { formula, source: '' };
}
