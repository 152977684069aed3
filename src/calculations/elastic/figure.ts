import type { Figure, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import type { Worked } from './worked.ts';

/** Between layers, below the casing, and between bars, in parts of how deep the casing is. */
const APART = 0.12;
const BELOW = 1.5;
const ROW = 0.45;
/** How long the longest bar is, in the same parts. */
const LONG = 3;

/** Where layers of the casing stand, in mm. */
export function layersOf({ casing }: Worked) {
  const apart = APART * toMm(casing.depth);
  return { elastic: apart, turned: 1.5 * apart, inner: 2 * apart };
}

/** A length to be drawn as a bar under the section, by the key of its field or output. */
export interface Bar {
  key: string;
  /** Of an output, not a field. */
  found?: true;
  long: ExactLength;
}

/** What is compared as bars, in their order down. */
export function barsOf({ asked, plan }: Worked): Bar[] {
  const { girth, pass, round, by } = asked;
  return [
    by === 'there' ? { key: 'there', long: plan.cut } : { key: 'cut', found: true, long: plan.cut },
    ...(plan.least === undefined ? [] : [{ key: 'least', found: true, long: plan.least } as const]),
    { key: 'girth', long: girth },
    ...(pass === undefined ? [] : [{ key: 'pass', long: pass }]),
    ...(round === undefined ? [] : [{ key: 'round', long: round }]),
  ];
}

/** Where a place along a bar is drawn, by its row. */
export function onBar(worked: Worked, row: number, along: ExactLength): Point {
  const deep = toMm(worked.casing.depth);
  const longest = Math.max(...barsOf(worked).map(({ long }) => long));
  return { x: (along / longest) * LONG * deep, y: (BELOW + ROW * (row + 0.5)) * deep };
}

/** The casing from its side, its layers drawn apart, and under it what is measured round, as bars. */
export function elasticFigure(worked: Worked): Figure {
  const { asked, casing } = worked;
  const at = layersOf(worked);
  const deep = toMm(casing.depth);
  const stitch = (y: number) =>
    lineAcross('stitch', y, [-at.elastic / 2, at.inner + at.elastic / 2]);
  const [header, turn] = [toMm(asked.header), toMm(asked.turn)];
  const top = header + (toMm(casing.clear) - toMm(asked.width)) / 2;
  const zero = exactLength(0);
  return [
    // Flat, before it was turned.
    lineDown('behind', 0, [-toMm(casing.allowance), 0]),
    lineAcross('cut', -toMm(casing.allowance), [-at.elastic / 2, at.elastic / 2]),
    lineDown('cloth', 0, [0, BELOW * deep]),
    lineAcross('fold', 0, [0, at.inner]),
    lineDown('cloth', at.inner, [0, deep]),
    ...(turn > 0
      ? [
          lineAcross('fold', deep, [at.turned, at.inner]),
          lineDown('cloth', at.turned, [deep - turn, deep]),
        ]
      : []),
    lineDown('measure', at.elastic, [top, top + toMm(asked.width)]),
    stitch(toMm(casing.stitch)),
    ...(header > 0 ? [stitch(header)] : []),
    ...barsOf(worked).map(({ long }, row) =>
      lineThrough(
        row === 0 ? 'measure' : 'cloth',
        onBar(worked, row, zero),
        onBar(worked, row, long),
      ),
    ),
  ];
}
