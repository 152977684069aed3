import { type ExactLength, length } from '../../lengths/length.ts';
import type { Bias } from '../../sewing/cloth/bias.ts';
import type { Run } from '../../sewing/run.ts';

/** The lines of strips from a corner, along one edge and on along the next. */
export function linesRun({ lines }: Bias, piece: ExactLength, wide: ExactLength): Run {
  return {
    datum: 'raw-corner',
    length: length(Math.ceil(piece + wide)),
    marks: lines.map((at, i) => ({ at, label: String(i + 1), kind: 'measure' })),
  };
}
