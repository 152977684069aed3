import type { Point } from '../../outline.ts';
import { arc } from './curves.ts';
import { pathOf, type Subpath } from './svg-path.ts';
import { inUserUnits } from './svg-units.ts';

type Attributes = ReadonlyMap<string, string>;

/**
 * What a part of an SVG file draws, in its own units; 'none' for a part that draws no line, and
 * undefined where it isn't written as it should be.
 */
export function shapePath(
  part: string,
  attributes: Attributes,
  perMm: number,
): Subpath[] | 'none' | undefined {
  const length = (key: string, absent = 0) => inUserUnits(attributes.get(key), absent);
  if (part === 'path') return pathOf(attributes.get('d') ?? '', perMm);
  if (part === 'polygon' || part === 'polyline') {
    const text = (attributes.get('points') ?? '').trim();
    const path = text && pathOf(`M${text}`, perMm);
    // One run of places and nothing else: no letter may stand among them.
    if (!path || /[A-DF-Za-df-z]/.test(text)) return text ? undefined : [];
    return path.map(({ points }) => ({ points, closed: part === 'polygon' }));
  }
  if (part === 'rect') return rectangle(attributes, length, perMm);
  if (part === 'circle') return round(length('cx'), length('cy'), length('r'), length('r'), perMm);
  if (part === 'ellipse') {
    return round(length('cx'), length('cy'), length('rx'), length('ry'), perMm);
  }
  if (part !== 'line') return 'none';
  const points: Point[] = [
    [length('x1'), length('y1')],
    [length('x2'), length('y2')],
  ];
  return [{ points, closed: false }];
}

function round(cx: number, cy: number, rx: number, ry: number, perMm: number) {
  // A radius of 0 draws nothing, by the standard; one below is a fault.
  if (rx < 0 || ry < 0) return undefined;
  if (rx === 0 || ry === 0) return [];
  return [{ points: quarter(cx, cy, rx, ry, 0, 4, perMm), closed: true }];
}

/** So many quarters of an ellipse, from an angle on, both counted in quarters. */
function quarter(
  cx: number,
  cy: number,
  rx: number,
  ry: number,
  from: number,
  by: number,
  perMm: number,
): Point[] {
  const place = (angle: number): Point => [cx + rx * Math.cos(angle), cy + ry * Math.sin(angle)];
  const [first, all] = [(from * Math.PI) / 2, (by * Math.PI) / 2];
  return [place(first), ...arc(place, first, all, Math.max(rx, ry) / perMm)];
}

function rectangle(
  attributes: Attributes,
  length: (key: string, absent?: number) => number,
  perMm: number,
): Subpath[] | undefined {
  const [x, y, wide, high] = [length('x'), length('y'), length('width'), length('height')];
  if (wide < 0 || high < 0) return undefined;
  if (wide === 0 || high === 0) return [];
  // One radius alone holds for both directions; neither goes past the middle.
  const said = (key: string) => attributes.has(key) && attributes.get(key) !== 'auto';
  const [ownX, ownY] = [
    said('rx') ? length('rx') : undefined,
    said('ry') ? length('ry') : undefined,
  ];
  const rx = Math.min(ownX ?? ownY ?? 0, wide / 2);
  const ry = Math.min(ownY ?? ownX ?? 0, high / 2);
  if (rx < 0 || ry < 0) return undefined;
  const corners: Point[] = [
    [x + wide, y + high],
    [x, y + high],
    [x, y],
    [x + wide, y],
  ];
  if (rx === 0 || ry === 0) return [{ points: corners, closed: true }];
  const points = corners.flatMap(([cx, cy], i) => {
    const [inX, inY] = [cx === x ? cx + rx : cx - rx, cy === y ? cy + ry : cy - ry];
    return quarter(inX, inY, rx, ry, i, 1, perMm);
  });
  return [{ points, closed: true }];
}
