import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { toMm } from '../../lengths/length.ts';
import type { PleatsInput } from '../../sewing/fullness/pleat-input.ts';
import { LINES } from '../../sewing/fullness/pleat-marks.ts';
import type { Pleats } from '../../sewing/fullness/pleats.ts';
import { foldedCloth } from './folded.ts';

/** How deep the strip is drawn, where the folded one lies below it, and how far a label lies above, in parts of its length. */
const HIGH = 0.12;
const BELOW = 0.24;
const LABEL = 0.035;
/** Between layers, in the same parts; less where pleats are so deep that it would add up. */
const APART = 0.02;

/** Where the folded strip lies below the flat one, in mm. */
export function foldedAt(input: PleatsInput, plan: Pleats, drawn: number): number {
  return drawnLong(input, plan, drawn) * BELOW;
}

/** How long a drawing of the first pleats is: all of the strip, or to just past the last line drawn. */
function drawnLong({ kind }: PleatsInput, { run, count }: Pleats, drawn: number): number {
  if (drawn === count) return toMm(run.length);
  const last = run.marks[drawn * LINES[kind] - 1];
  return toMm(last?.at ?? run.length) * 1.05;
}

/** The strip with its fold and placement lines, each pleat's first one numbered, and the same folded below it. */
export function pleatsFigure(input: PleatsInput, plan: Pleats, drawn: number): Figure {
  return [
    ...stripOf(input, plan, drawn),
    ...foldedShapes(input, plan, drawn),
    ...numbers(input, plan, drawn),
  ];
}

/** Without numbers: for a drawing that has its dimensions on it. */
export function pleatsShapes(input: PleatsInput, plan: Pleats, drawn: number): Figure {
  return [...stripOf(input, plan, drawn), ...foldedShapes(input, plan, drawn)];
}

function stripOf(input: PleatsInput, plan: Pleats, drawn: number): FigureShape[] {
  const long = drawnLong(input, plan, drawn);
  const high = long * HIGH;
  const whole = drawn === plan.count;
  const marks = plan.run.marks.slice(0, drawn * LINES[input.kind]);
  const upright = (x: number, line: 'cut' | 'fold' | 'placement'): FigureShape => ({
    line,
    points: [
      { x, y: 0 },
      { x, y: high },
    ],
  });
  const along = (y: number): FigureShape => ({
    line: 'cloth',
    points: [
      { x: 0, y },
      { x: long, y },
    ],
  });
  return [
    along(0),
    along(high),
    upright(0, 'cut'),
    ...(whole ? [upright(long, 'cut')] : []),
    ...marks.map(({ at, kind }) => upright(toMm(at), kind === 'fold' ? 'fold' : 'placement')),
  ];
}

function foldedShapes(input: PleatsInput, plan: Pleats, drawn: number): FigureShape[] {
  const long = drawnLong(input, plan, drawn);
  const [width, depth] = [toMm(plan.width), toMm(input.depth)];
  const apart = long * Math.min(APART, (0.1 * width) / depth);
  const folded = foldedCloth({
    kind: input.kind,
    seam: toMm(input.seam),
    width,
    depth,
    face: plan.box === undefined ? 0 : toMm(plan.box.face),
    overlap: plan.overlap,
    half: input.kind === 'knife' && input.ends === 'half',
    flat: drawn === plan.count ? toMm(input.flat) : 0,
    drawn,
    apart,
  });
  const y = foldedAt(input, plan, drawn);
  return [
    { line: 'cloth', points: folded.map((point): Point => ({ x: point.x, y: point.y + y })) },
  ];
}

function numbers(input: PleatsInput, plan: Pleats, drawn: number): FigureShape[] {
  const y = -drawnLong(input, plan, drawn) * LABEL;
  return Array.from({ length: drawn }, (_, i) => plan.run.marks[i * LINES[input.kind]]).flatMap(
    (mark) => (mark ? [{ label: mark.label, at: { x: toMm(mark.at), y } }] : []),
  );
}
