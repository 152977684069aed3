import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { type Wedge, wedgeOf } from '../../sewing/shaping/dart.ts';
import type { Darted } from './darted.ts';

/** How long edges are drawn beside the dart, and how far the next drawing is, in parts of its width. */
const BESIDE = 0.6;

/** Where a dart with its edge level at nothing has its point and the ends of its legs, in mm. */
export function placesOf({ width, middle }: Pick<Wedge, 'width' | 'middle'>, x = 0) {
  return {
    point: { x, y: toMm(middle) },
    near: { x: x - toMm(width) / 2, y: 0 },
    far: { x: x + toMm(width) / 2, y: 0 },
  };
}

/** Where the middle of what it becomes is drawn, in mm. */
export function besideAt(dart: Wedge, next: Wedge | ExactLength): number {
  const wide = typeof next === 'number' ? next : next.width;
  return toMm(exactLength(dart.width * (0.5 + 2 * BESIDE) + wide * 0.5));
}

/** The dart that one becomes where it is moved, or partly in a seam. */
export function nextOf({ asked, made }: Darted): Wedge | undefined {
  if (made.what === 'moved') return wedgeOf(made.moved.angle, asked.reach ?? ZERO);
  if (made.what === 'seam') return wedgeOf(made.seamed.angle, asked.leg ?? ZERO);
  return undefined;
}

/** Where edges run: to the outer end of each drawn edge, square outwards from one, and the tips. */
export function edgePlaces({ asked, dart, made }: Darted) {
  const half = dart.angle / 2;
  const point = { x: 0, y: toMm(dart.middle) };
  const slant = ((asked.slant ?? 90) * Math.PI) / 180;
  const other = ((asked.other ?? 180 - (asked.slant ?? 90)) * Math.PI) / 180;
  const long = BESIDE * toMm(dart.width);
  const legEnd = (along: ExactLength, side: -1 | 1): Point => ({
    x: side * toMm(along) * Math.sin(half),
    y: point.y - toMm(along) * Math.cos(half),
  });
  const outwards = (from: Point, angle: number, side: -1 | 1, by = long): Point => ({
    x: from.x + side * by * Math.sin(angle - half),
    y: from.y + by * Math.cos(angle - half),
  });
  const [leg, edge] = [asked.leg ?? ZERO, made.what === 'edge' ? made.edge : undefined];
  const near = legEnd(leg, -1);
  const far = legEnd(leg, 1);
  const cutNear = legEnd(edge?.cutLeg ?? leg, -1);
  const cutFar = legEnd(exactLength(leg + asked.seam / Math.sin(other)), 1);
  const end = outwards(near, slant, -1);
  return {
    point,
    near,
    far,
    cutNear,
    cutFar,
    end,
    farEnd: outwards(far, other, 1),
    cutEnd: outwards(cutNear, slant, -1),
    cutFarEnd: outwards(cutFar, other, 1),
    /** Square from the stitch line to the raw edge. */
    seamEnd: outwards(end, slant + Math.PI / 2, -1, toMm(asked.seam)),
    tip: { x: 0, y: point.y - toMm(edge?.tip ?? leg) },
    cutTip: { x: 0, y: point.y - toMm(edge?.cutTip ?? leg) },
  };
}

/** The dart flat, with its raw edge, or beside it what it becomes. */
export function dartFigure(found: Darted): Figure {
  const { asked, dart, made } = found;
  if (made.what === 'edge') return edgeFigure(found);
  const { near, far, point } = placesOf(dart);
  if (made.what === 'two') {
    const low = { x: 0, y: -toMm(asked.below ?? ZERO) };
    return [lineThrough('stitch', near, point, far, low, near)];
  }
  const next = nextOf(found);
  const legs = lineThrough('stitch', near, point, far);
  if (made.what === 'gathers') {
    const { strip } = made.gathered;
    const [x, y] = [besideAt(dart, strip), toMm(dart.middle) / 2];
    const bar = (units: ExactLength, at: number, style: 'cloth' | 'stitch'): FigureShape =>
      lineAcross(style, at, [x - toMm(strip) / 2, x - toMm(strip) / 2 + toMm(units)]);
    return [...edgeLine(dart), legs, bar(strip, 0, 'cloth'), bar(asked.zone ?? ZERO, y, 'stitch')];
  }
  if (!next) return [legs];
  const at = besideAt(dart, next);
  const beside = placesOf(next, at);
  return [
    ...edgeLine(dart),
    legs,
    ...edgeLine(next, at),
    lineThrough('stitch', beside.near, beside.point, beside.far),
    ...(made.what === 'seam'
      ? [lineAcross('placement', toMm(next.middle), [at, at + toMm(made.seamed.taken)])]
      : []),
  ];
}

function edgeLine({ width }: Wedge, x = 0): FigureShape[] {
  const half = toMm(width) * (0.5 + BESIDE / 2);
  return [lineAcross('cloth', 0, [x - half, x + half])];
}

function edgeFigure(found: Darted): Figure {
  const at = edgePlaces(found);
  return [
    lineThrough('cut', at.cutEnd, at.cutNear, at.cutTip, at.cutFar, at.cutFarEnd),
    lineThrough('stitch', at.end, at.near, at.point, at.far, at.farEnd),
    lineThrough('placement', at.near, at.tip, at.far),
    lineThrough('fold', at.point, at.cutTip),
  ];
}
