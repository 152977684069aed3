import type { Figure, FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import type { Taken } from './taken.ts';

/** How much of the smaller girth is drawn, how far apart its lines are, and marks across, in parts of what is taken. */
const SHORT = 0.5;
const APART = 0.18;
const MARK = 0.03;

/** Where both girths and the shares are drawn, in mm. */
export function dartsAt({ plan }: Taken) {
  const all = toMm(plan.intake);
  return { begins: -SHORT * all, larger: -2 * APART * all, smaller: -APART * all, shares: 0, all };
}

/** Where each kind's shares begin, in 1/8000 mm from the end of the smaller girth. */
export function startsOf({ plan, input }: Taken): number[] {
  let from = 0;
  return input.kinds.map(({ count }, i) => {
    const start = from;
    from += count * (plan.each[i] ?? 0);
    return start;
  });
}

/** Both girths, what each place takes of their difference, and the first dart of each kind. */
export function dartsFigure(found: Taken): Figure {
  const { input, plan } = found;
  const at = dartsAt(found);
  const mark = MARK * at.all;
  const starts = startsOf(found);
  const mmOf = (units: number) => toMm(exactLength(units));
  const tick = (x: number, y: number, style: 'measure' | 'cut'): FigureShape =>
    lineDown(style, x, [y - mark, y + mark]);
  const sewn = input.kinds.flatMap(({ count, long }, i): FigureShape[] => {
    const [from, each] = [starts[i] ?? 0, plan.each[i] ?? 0];
    const ticks = Array.from({ length: count + 1 }, (_, n) =>
      tick(mmOf(from + n * each), at.shares, 'measure'),
    );
    if (!long || each === 0) return ticks;
    const point = { x: mmOf(from + each / 2), y: toMm(long.length) };
    const [near, far] = [from, from + each].map((x) => ({ x: mmOf(x), y: at.shares }));
    return near && far ? [...ticks, lineThrough('stitch', near, point, far)] : ticks;
  });
  return [
    lineAcross('cloth', at.larger, [at.begins, at.all]),
    lineAcross('cloth', at.smaller, [at.begins, 0]),
    tick(at.begins, at.larger, 'cut'),
    tick(at.all, at.larger, 'cut'),
    tick(at.begins, at.smaller, 'cut'),
    tick(0, at.smaller, 'cut'),
    lineAcross('cloth', at.shares, [0, mmOf(plan.intake - plan.left)]),
    ...sewn,
  ];
}
