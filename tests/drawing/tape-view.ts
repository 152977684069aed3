import type { TapeView } from '../../src/drawing/tape-layout.ts';
import type { TapeRole, TapeShape } from '../../src/drawing/tape-shape.ts';
import { exactLength, type Length, mm } from '../../src/lengths/length.ts';
import type { Mark, Run } from '../../src/sewing/run.ts';

/** A strip as on a narrow phone: 36 mm, ten px to the mm. */
export function view(change: Partial<TapeView> = {}): TapeView {
  return {
    start: exactLength(0),
    pxPerMm: 10,
    width: 360,
    height: 84,
    labelSize: 14,
    tickGap: 4,
    edges: ['cm', 'in'],
    decimalMark: '.',
    ...change,
  };
}

/** A run with a closure at each of these places in mm, numbered from 1. */
export function runOf(lengthMm: number, marksMm: readonly number[] = []): Run {
  return withMarks(mm(lengthMm), marksMm.map(mm));
}

export function withMarks(length: Length, places: readonly Mark['at'][]): Run {
  const marks = places.map((at, i) => ({ at, label: String(i + 1), kind: 'closure' as const }));
  return { datum: 'top-edge', length, marks };
}

/** A line that stands across the strip, read back from a path. */
export interface Line {
  x: number;
  from: number;
  to: number;
}

/** The upright lines of all paths with this role, in the order drawn. */
export function lines(shapes: readonly TapeShape[], role: TapeRole): Line[] {
  return shapes.flatMap((shape) =>
    shape.shape === 'path' && shape.role === role ? uprights(shape.d) : [],
  );
}

/** The tick paths: upper edge, lower edge. */
export function ticks(shapes: readonly TapeShape[]): [Line[], Line[]] {
  const [upper = [], lower = []] = shapes.flatMap((shape) =>
    shape.shape === 'path' && shape.role === 'ticks' ? [uprights(shape.d)] : [],
  );
  return [upper, lower];
}

function uprights(d: string): Line[] {
  return [...d.matchAll(/M(\S+) (\S+?)([vV])([^MvV]+)/g)].map(([, x, y, how, to]) => {
    const from = Number(y);
    return { x: Number(x), from, to: how === 'v' ? from + Number(to) : Number(to) };
  });
}

export function texts(shapes: readonly TapeShape[], role: TapeRole) {
  return shapes.filter((each) => each.shape === 'text').filter((each) => each.role === role);
}

export function pills(shapes: readonly TapeShape[]) {
  return shapes.filter((each) => each.shape === 'pill');
}
