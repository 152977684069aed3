import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthUp } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { type HemLines, hemLines, layersOf } from '../../drawing/hem-figure.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { type Facing, facedHem } from '../../sewing/hems/hem-facing.ts';
import { type FacingAsked, facingFields } from './fields.ts';

/** A section through the faced hem and the facing flat beside it, their heights to scale. */
export const facingDrawing: Drawing = {
  id: 'facing',
  // Too thin to be seen, measured round the hem line, or along the piece.
  unplaced: () => ['thickness', 'radius', 'finished', 'otherEnd', 'left', 'edge'],
  draw(draft, bench) {
    const read = facingFields.read(draft, bench);
    if (!read.ok) return undefined;
    const faced = facedHem(read.value);
    if (!faced.ok) return undefined;
    const { depth, turn, seam } = read.value;
    const { stitchUp, allowance } = faced.value;
    const section = {
      depth: toMm(depth),
      turn: toMm(turn),
      stitchUp: toMm(stitchUp),
      seam: toMm(seam),
    };
    return {
      name: words.faced,
      toScale: true,
      shapes: [
        ...hemLines(section),
        // The piece as it was before its edge was turned up.
        lineDown('behind', 0, [0, toMm(allowance)]),
        ...flat(section, faced.value),
      ],
      dimensions: dimensions(read.value, faced.value, section, bench),
    };
  },
};

/** Where the facing lies flat, beyond the hem. */
function besideOf(section: HemLines): number {
  return 3 * layersOf(section).hem;
}

/** The facing flat, its folds at the heights they come to lie at. */
function flat(section: HemLines, { allowance, cutDeep }: Facing): FigureShape[] {
  const x = besideOf(section);
  const half = layersOf(section).turned / 2;
  const across = (y: number, style: 'fold' | 'cut') => lineAcross(style, y, [x - half, x + half]);
  const [low, high] = [toMm(allowance), toMm(exactLength(allowance - cutDeep))];
  return [
    lineDown('cloth', x, [low, high]),
    across(low, 'cut'),
    across(0, 'fold'),
    ...(section.turn > 0 ? [across(-section.depth, 'fold')] : []),
    across(high, 'cut'),
  ];
}

function dimensions(
  { depth, seam, turn, edgeStitch }: FacingAsked,
  { stitchUp, allowance, cutDeep }: Facing,
  section: HemLines,
  bench: Bench,
): Dimension[] {
  const layer = layersOf(section);
  const up = (x: number, from: number, to: number, of: DimensionOf) =>
    lengthUp(x, [from, to], of, bench);
  return [
    up(layer.hem, 0, depth, { given: 'depth' }),
    up(layer.hem, 0, stitchUp, { found: 'stitch-up' }),
    up(layer.hem, stitchUp, stitchUp + edgeStitch, { given: 'edgeStitch' }),
    up(layer.turned, depth - turn, depth, { given: 'turn' }),
    up(layer.joined, 0, seam, { given: 'seam' }),
    up(0, -allowance, 0, { found: 'allowance' }),
    up(besideOf(section), -allowance, cutDeep - allowance, { found: 'facing-deep' }),
  ];
}
