import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import type { Changed } from './read.ts';

/** How long a mark across the line is, and how far from it each share lies, in parts of the whole. */
const MARK = 0.03;
const APART = 0.12;

/** Where each kind's shares begin on the line of the whole change, in 1/8000 mm. */
export function sharesAt({ places, plan }: Changed): number[] {
  let from = 0;
  return places.map(({ count }, i) => {
    const start = from;
    from += count * (plan.each[i] ?? 0);
    return start;
  });
}

/** How far below the whole change the shares are drawn, in mm. */
export function sharesBelow({ asked }: Changed): number {
  return APART * toMm(asked.change);
}

/** The whole change as a line, and under it what each place takes, one after the other. */
export function sharesShapes(found: Changed): FigureShape[] {
  const { asked, places, plan } = found;
  const [whole, y] = [toMm(asked.change), sharesBelow(found)];
  const mark = MARK * whole;
  const tick = (units: number, at: number, style: 'measure' | 'cut') => {
    const x = toMm(exactLength(units));
    return lineDown(style, x, [at - mark, at + mark]);
  };
  const starts = sharesAt(found);
  const taken = exactLength(asked.change - plan.left);
  return [
    lineAcross('cloth', 0, [0, whole]),
    tick(0, 0, 'cut'),
    tick(asked.change, 0, 'cut'),
    lineAcross('cloth', y, [0, toMm(taken)]),
    ...places.flatMap(({ count }, i) =>
      Array.from({ length: count + 1 }, (_, n) =>
        tick((starts[i] ?? 0) + n * (plan.each[i] ?? 0), y, 'measure'),
      ),
    ),
  ];
}
