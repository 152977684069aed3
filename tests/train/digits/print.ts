import type { Mask } from '../../tapes/pen.ts';

/** How much of a place is inked, 0 to 1. Places in heights of a digit, from the middle of the cell. */
export type Ink = (x: number, y: number) => number;

/** What a cell is cut from: what it is about, and what else is printed around it. */
export interface Print {
  readonly own: Ink;
  readonly others: readonly Ink[];
  /** Width of the cell's box, 1 high; without it the box is what the own ink fills. */
  readonly boxWidth?: number;
  /** Wider than a digit. */
  readonly wide?: boolean;
  /** Nothing that could be cut out along its ink. */
  readonly bare?: boolean;
}

/** A character `height` high, with its middle at a place. */
export function maskInk(
  { width, height: tall, alpha }: Mask,
  x: number,
  y: number,
  height: number,
): Ink {
  const texels = tall / height;
  const [left, top] = [x - width / 2 / texels, y - height / 2];
  return (atX, atY) => {
    const u = (atX - left) * texels - 0.5;
    const v = (atY - top) * texels - 0.5;
    if (u <= -1 || v <= -1 || u >= width || v >= tall) return 0;
    const [column, row] = [Math.floor(u), Math.floor(v)];
    const [right, below] = [u - column, v - row];
    const at = row * width + column;
    const hasLeft = column >= 0;
    const hasRight = column + 1 < width;
    let sum = 0;
    if (row >= 0) {
      if (hasLeft) sum += (alpha[at] as number) * (1 - right) * (1 - below);
      if (hasRight) sum += (alpha[at + 1] as number) * right * (1 - below);
    }
    if (row + 1 < tall) {
      if (hasLeft) sum += (alpha[at + width] as number) * (1 - right) * below;
      if (hasRight) sum += (alpha[at + width + 1] as number) * right * below;
    }
    return sum / 255;
  };
}

/** A stroke with square ends. */
export function strokeInk(
  [x0, y0]: readonly [number, number],
  [x1, y1]: readonly [number, number],
  thick: number,
): Ink {
  const length = Math.max(1e-6, Math.hypot(x1 - x0, y1 - y0));
  const [alongX, alongY] = [(x1 - x0) / length, (y1 - y0) / length];
  return (x, y) => {
    const along = (x - x0) * alongX + (y - y0) * alongY;
    const off = Math.abs((y - y0) * alongX - (x - x0) * alongY);
    return along >= 0 && along <= length && off <= thick / 2 ? 1 : 0;
  };
}

/** Ink turned about the middle, by degrees clockwise. */
export function turnedInk(ink: Ink, degrees: number): Ink {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return (x, y) => ink(x * cos + y * sin, y * cos - x * sin);
}

export function joinedInk(inks: readonly Ink[]): Ink {
  return (x, y) => {
    let most = 0;
    for (const ink of inks) most = Math.max(most, ink(x, y));
    return most;
  };
}
