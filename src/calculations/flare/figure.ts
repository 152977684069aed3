import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import type { FlareAsked } from './fields.ts';
import type { Flared } from './flared.ts';

/** Between lines, in parts of the hem. */
const APART = 0.12;
const STEPS = 24;

/** Where things are drawn, in mm: what is put in lies above both hems, which begin at nothing. */
export function flareAt({ sweep }: FlareAsked) {
  const apart = APART * toMm(sweep);
  return { before: apart, after: 2 * apart };
}

/** A wedge with its point above the hem lines: of a slash, or of a godet. */
export function wedgePlaces(
  asked: FlareAsked,
  found: Flared,
): { point: Point; near: Point; far: Point } | undefined {
  if (found.what === 'length') return undefined;
  const wide = found.what === 'slash' ? found.plan.spread : found.plan.chord;
  const half = toMm(wide) / 2;
  const edge = toMm((found.what === 'slash' ? asked.long : asked.edge) ?? ZERO);
  const high = found.what === 'slash' ? edge : edge * Math.cos(found.plan.angle / 2);
  return { point: { x: half, y: -high }, near: { x: 0, y: 0 }, far: { x: 2 * half, y: 0 } };
}

/** Corners of the piece laid straight: upper edge, hem before, hem then; all about one middle. */
export function piecePlaces(asked: FlareAsked, found: Flared) {
  const [upper, sweep, hem] = [asked.upper ?? ZERO, asked.sweep, found.plan.hem].map(
    (x) => toMm(exactLength(x)) / 2,
  );
  const long = toMm(asked.long ?? ZERO);
  const then = found.what === 'length' ? toMm(found.plan.long) : long;
  return { upper: upper ?? 0, sweep: sweep ?? 0, hem: hem ?? 0, long, then };
}

/** Both hems laid straight with what is put in, or the piece with its hem before and after. */
export function flareFigure(asked: FlareAsked, found: Flared): Figure {
  if (found.what === 'length') return pieceFigure(asked, found);
  const at = flareAt(asked);
  const bar = (y: number, x: ExactLength, line: 'cloth' | 'stitch'): FigureShape =>
    lineAcross(line, y, [0, toMm(x)]);
  return [
    ...wedge(asked, found),
    bar(at.before, asked.sweep, 'cloth'),
    bar(at.after, found.plan.hem, 'stitch'),
  ];
}

function wedge(asked: FlareAsked, found: Flared): FigureShape[] {
  const places = wedgePlaces(asked, found);
  if (!places || found.what === 'length') return [];
  const { point, near, far } = places;
  if (found.what === 'slash') return [lineThrough('cut', near, point, far)];
  const edge = toMm(asked.edge ?? ZERO);
  const { angle } = found.plan;
  const arc = Array.from({ length: STEPS + 1 }, (_, i): Point => {
    const turn = angle * (i / STEPS - 0.5);
    return { x: point.x + edge * Math.sin(turn), y: point.y + edge * Math.cos(turn) };
  });
  return [lineThrough('stitch', near, point, far), lineThrough('cloth', ...arc)];
}

function pieceFigure(asked: FlareAsked, found: Flared): Figure {
  const { upper, sweep, hem, long, then } = piecePlaces(asked, found);
  return [
    lineThrough(
      'cloth',
      { x: -sweep, y: long },
      { x: -upper, y: 0 },
      { x: upper, y: 0 },
      { x: sweep, y: long },
      { x: -sweep, y: long },
    ),
    lineThrough('stitch', { x: -hem, y: then }, { x: -upper, y: 0 }),
    lineThrough('stitch', { x: hem, y: then }, { x: upper, y: 0 }),
    lineAcross('stitch', then, [-hem, hem]),
  ];
}
