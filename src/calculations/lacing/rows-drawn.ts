import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { boundsOf, Figure, Point } from '../../drawing/figure.ts';
import { lineAcross } from '../../drawing/figure-line.ts';
import { circle } from '../../drawing/figure-ring.ts';
import { type Length, toMm } from '../../lengths/length.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';

type Seen = readonly [number, number];
type Bounds = ReturnType<typeof boundsOf>;

/** Room under a row, in pitches; a hole of a row that isn't laced here; the strip beyond its last hole. */
const ROOM = 1;
const HOLE = 0.2;
const BEYOND = 0.6;

/** What is measured on the row that is laced, and through its layers. */
export function ofRow(
  input: LacingInput,
  [first, last]: Seen,
  top: number,
  bench: Bench,
): Dimension[] {
  const { holes, pitch, margin, lace, outside, thickness, kind } = input;
  const [step, row] = [toMm(pitch), toMm(margin)];
  const at = (hole: number, y: number): Point => ({ x: hole * step, y });
  const end = last + BEYOND;
  const on = (from: Point, to: Point, length: Length, given: string) =>
    lengthAt([from, to], length, { given }, bench);
  const half = (lace ?? 0) / 2;
  const [left, right] = [-1, 1].map((way) => first * step + way * toMm(half as Length));
  return [
    counted(at(first, row), at(last, row), holes, 'holes'),
    on(at(first, row), at(first + 1, row), pitch, 'pitch'),
    on(at(end, 0), at(end, row), margin, 'margin'),
    ...(kind === 'outside' ? [on(at(end, -toMm(outside)), at(end, 0), outside, 'outside')] : []),
    ...(lace === undefined
      ? []
      : [on({ x: left ?? 0, y: row }, { x: right ?? 0, y: row }, lace, 'lace')]),
    on(at(end, top), at(end, top + toMm(thickness)), thickness, 'thickness'),
  ];
}

/** A second row under the first, as many of its holes as are seen of that one. */
export function rowLines(
  second: LacingInput,
  [first, last]: Seen,
  { x, y, width, height }: Bounds,
) {
  const step = toMm(second.pitch);
  const edge = y + height + ROOM * step;
  const row = edge + toMm(second.margin);
  const start = x + BEYOND * step;
  const seen = Math.min(second.holes, last - first + 1);
  const at = (hole: number): Point => ({ x: start + hole * step, y: row });
  const shapes: Figure = [
    lineAcross('cloth', edge, [x, Math.max(x + width, at(seen - 1).x)]),
    ...Array.from({ length: seen }, (_, i) => circle(at(i), HOLE * step, 'hole')),
  ];
  return {
    shapes,
    dimensions: ({ holes, pitch }: LacingInput, ownPitch: boolean, bench: Bench): Dimension[] => [
      counted(at(0), at(seen - 1), holes, 'holes2'),
      ...(ownPitch ? [lengthAt([at(0), at(1)], pitch, { given: 'pitch2' }, bench)] : []),
    ],
  };
}

/** All that the lace passes through, from its side, under what is drawn so far. */
export function layersLines(
  { pitch, thickness }: LacingInput,
  [first, last]: Seen,
  { y, height }: Bounds,
) {
  const step = toMm(pitch);
  const top = y + height + ROOM * step;
  const foot = top + toMm(thickness);
  const [left, right] = [(first - BEYOND) * step, (last + BEYOND) * step];
  const shapes: Figure = [top, foot].map((at) => lineAcross('cloth', at, [left, right]));
  return { shapes, top };
}

function counted(from: Point, to: Point, holes: number, given: string): Dimension {
  return { from, to, text: words.holes(holes), by: { given } };
}
