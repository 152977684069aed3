import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Figure } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { wholeUnder } from '../../drawing/whole-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { hangsOpen, type Pleated } from './pleated.ts';

interface WithLevels {
  shapes: Figure;
  dimensions: Dimension[];
}

/**
 * Under a drawing of pleats, a line for each other level: what the strip comes to there, and how
 * deep its first fold is.
 *
 * @param toScale whether the drawing above is all of the strip
 */
export function withLevels(
  shapes: Figure,
  { input, plan, levels }: Pleated,
  bench: Bench,
  toScale: boolean,
): WithLevels {
  const { seam, kind, ends } = input;
  return levels.reduce<WithLevels>(
    (above, level) => {
      const { at, across } = wholeUnder(above.shapes, toMm(plan.cut), toScale);
      const place = (along: number) => at(toMm(exactLength(seam + along)));
      const { depth, width } = level.plan;
      const fold = kind === 'knife' && ends === 'fold' ? width : width / 2;
      const line = [
        lineThrough('cloth', place(0), place(level.across)),
        across('placement', toMm(seam)),
        across('placement', toMm(exactLength(seam + level.across))),
        across('fold', toMm(exactLength(seam + fold))),
      ];
      const whole = [place(0), place(level.across)] as const;
      const folded = [place(fold - depth), place(fold)] as const;
      return {
        shapes: [...above.shapes, ...line],
        dimensions: [
          ...above.dimensions,
          lengthAt(whole, level.across, { given: level.field }, bench),
          ...(hangsOpen(level)
            ? []
            : [lengthAt(folded, depth, { found: `${level.field}-depth` }, bench)]),
        ],
      };
    },
    { shapes, dimensions: [] },
  );
}
