import type { Point } from './figure.ts';
import type { PaperShape } from './paper-job.ts';

/** Lettering beside the work, in mm. */
export const SMALL = 2.8;
/** The finest line that prints whole, in mm. */
export const FINE = 0.15;
/** Each arm of a hole's cross hair, in diameters of the hole. */
export const HAIR = 0.9;

export function line(from: Point, to: Point, weight: number): PaperShape {
  return { kind: 'line', from, to, weight };
}

export function text(at: Point, said: string, size: number): PaperShape {
  return { kind: 'text', at, text: said, size };
}

/** A hole; one that is to be punched has a cross hair to set the punch by. */
export function holeShapes(at: Point, hole: number, punched: boolean): PaperShape[] {
  const ring: PaperShape = { kind: 'circle', at, radius: hole / 2, weight: FINE };
  return punched ? [ring, ...hairShapes(at, hole)] : [ring];
}

export function hairShapes({ x, y }: Point, hole: number): PaperShape[] {
  const arm = hole * HAIR;
  return [
    line({ x: x - arm, y }, { x: x + arm, y }, FINE),
    line({ x, y: y - arm }, { x, y: y + arm }, FINE),
  ];
}
