import type { Run } from '../sewing/run.ts';
import { tapeEdge } from './tape-edge.ts';
import { type TapeLayout, type TapeView, tapeLayout } from './tape-layout.ts';
import { markHeads, markLines } from './tape-marks.ts';
import type { TapeShape } from './tape-shape.ts';

/**
 * A piece of tape lying along a run, to scale, both edges graduated, with the
 * run's marks on it; zero is at the datum. The shapes come in the order in which
 * they are painted, each over those before it.
 *
 * Only what is on the strip is drawn. The work grows with the strip's width and,
 * for the heads, in proportion to the number of marks.
 *
 * @param here index of the current mark, if there is one
 * @throws RangeError when the scale is not above 0.
 */
export function tapeStrip(run: Run, view: TapeView, here?: number): TapeShape[] {
  const layout = tapeLayout(view);
  return [
    ...cloth(layout, run.length),
    ...markLines(layout, run.marks, here),
    ...tapeEdge(layout, 0, run.length),
    ...tapeEdge(layout, 1, run.length),
    ...markHeads(layout, run.marks, here),
  ];
}

/** What lies past the cloth at either end, and the cloth's edges themselves. */
function cloth(layout: TapeLayout, length: number): TapeShape[] {
  const { x, width, height } = layout;
  const shapes: TapeShape[] = [];
  const beyond = (from: number, to: number) => {
    if (to > from) {
      shapes.push({ shape: 'path', role: 'beyond', d: `M${from} 0H${to}V${height}H${from}Z` });
    }
  };
  beyond(0, Math.min(x(0), width));
  beyond(Math.max(x(length), 0), width);
  const edges = [x(0), x(length)].filter((each) => each >= 0 && each <= width);
  const d = edges.map((each) => `M${each} 0V${height}`).join('');
  if (d) shapes.push({ shape: 'path', role: 'cloth-edge', d });
  return shapes;
}
