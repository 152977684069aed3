import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import type { Match } from '../../sewing/pieces/matching.ts';
import type { Run } from '../../sewing/run.ts';
import { notchesAlone, sleeveNotches } from './notches.ts';
import type { Matched } from './read.ts';

/** How far apart the edges are drawn, and how long a mark is, in parts of the longer. */
const APART = 0.16;
const MARK = 0.02;

/** How far below this edge the other one is drawn, in mm. */
export function otherAt({ runs }: Match): number {
  return APART * longest(runs);
}

function longest({ here, other }: Match['runs']): number {
  return toMm(exactLength(Math.max(here.length, other.length)));
}

/** Both edges laid straight, from where they begin, what meets joined, and of lengths that don't pair the ends alone; the back notch of a sleeve is a double one. */
export function matchShapes(found: Matched): FigureShape[] {
  const { plan } = found;
  const notches = sleeveNotches(found);
  const double = notches?.front ? notches.last : notches?.first;
  const { here, other } = plan.runs;
  const [mark, low] = [MARK * longest(plan.runs), otherAt(plan)];
  const edge = (run: Run, y: number, which: 'here' | 'other') => [
    lineAcross('cloth', y, [0, toMm(run.length)]),
    ...notchesAlone(found, which).map(({ at }) =>
      lineDown('cloth', toMm(at), [y - mark, y + mark]),
    ),
    ...run.marks.flatMap(({ at, kind }, i) => {
      const half = kind === 'notch' ? mark : mark / 2;
      const ticks = i === double ? [toMm(at) - mark / 3, toMm(at) + mark / 3] : [toMm(at)];
      return ticks.map((x) => lineDown('measure', x, [y - half, y + half]));
    }),
  ];
  const on = (run: Run, i: number, y: number): Point => ({
    x: toMm(run.marks[i]?.at ?? run.length),
    y,
  });
  const joined = here.marks.flatMap(({ kind }, i) =>
    kind === 'notch' ? [lineThrough('placement', on(here, i, 0), on(other, i, low))] : [],
  );
  const ends = lineThrough(
    'placement',
    { x: toMm(here.length), y: 0 },
    { x: toMm(other.length), y: low },
  );
  return [...edge(here, 0, 'here'), ...edge(other, low, 'other'), ...joined, ends];
}
