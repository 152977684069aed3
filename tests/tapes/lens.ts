import type { Canvas } from './canvas.ts';

/** What the lens and a moving hand do to the picture. */
export interface LensSpec {
  /** Standard deviation of the blur where the lens is sharpest, px. */
  readonly blur: number;
  /** Length of the streak of a moved picture, px, and its direction in radians. */
  readonly motion: number;
  readonly motionAngle: number;
  /** More blur (px) at the far end of the picture, and where it is sharp: -0.5 to 0.5 of its height. */
  readonly depth?: { blur: number; sharpAt: number };
}

export function throughLens(canvas: Canvas, lens: LensSpec): void {
  if (lens.motion > 0.5) streaked(canvas, lens);
  blurred(canvas, lens.blur);
  if (!lens.depth) return;
  const far = { ...canvas, values: canvas.values.slice() };
  blurred(far, lens.depth.blur);
  for (let y = 0; y < canvas.height; y++) {
    const off = Math.abs(y / canvas.height - 0.5 - lens.depth.sharpAt);
    const share = Math.min(1, Math.max(0, (off - 0.12) * 2));
    for (let at = y * canvas.width; at < (y + 1) * canvas.width; at++) {
      canvas.values[at] = canvas.values[at]! + share * (far.values[at]! - canvas.values[at]!);
    }
  }
}

/** A bell-shaped blur of the given standard deviation, cut at three of them. */
function blurred(canvas: Canvas, sigma: number): void {
  if (sigma < 0.2) return;
  const reach = Math.ceil(3 * sigma);
  const bell = Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp((-i * i) / (2 * sigma * sigma)),
  );
  const sum = bell.reduce((total, weight, i) => total + (i === 0 ? weight : 2 * weight), 0);
  const weights = Float32Array.from(bell, (weight) => weight / sum);
  alongRows(canvas, weights);
  alongColumns(canvas, weights);
}

function alongRows({ width, height, values }: Canvas, weights: Float32Array): void {
  const reach = weights.length - 1;
  const line = new Float32Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    const row = values.subarray(y * width, (y + 1) * width);
    line.set(row, reach);
    line.fill(row[0]!, 0, reach);
    line.fill(row[width - 1]!, reach + width);
    for (let x = 0; x < width; x++) {
      let sum = line[x + reach]! * weights[0]!;
      for (let i = 1; i <= reach; i++) {
        sum += weights[i]! * (line[x + reach - i]! + line[x + reach + i]!);
      }
      row[x] = sum;
    }
  }
}

/** Row by row too, so that memory is read in order. */
function alongColumns({ width, height, values }: Canvas, weights: Float32Array): void {
  const reach = weights.length - 1;
  const before = values.slice();
  const rowAt = (y: number) => Math.min(height - 1, Math.max(0, y)) * width;
  for (let y = 0; y < height; y++) {
    const out = values.subarray(y * width, (y + 1) * width);
    const here = rowAt(y);
    for (let x = 0; x < width; x++) out[x] = weights[0]! * before[here + x]!;
    for (let i = 1; i <= reach; i++) {
      const [up, down, weight] = [rowAt(y - i), rowAt(y + i), weights[i]!];
      for (let x = 0; x < width; x++) out[x]! += weight * (before[up + x]! + before[down + x]!);
    }
  }
}

function streaked(canvas: Canvas, { motion, motionAngle }: LensSpec): void {
  const { width, height, values } = canvas;
  const before = values.slice();
  const taps = Math.max(3, Math.ceil(motion) | 1);
  values.fill(0);
  for (let tap = 0; tap < taps; tap++) {
    const off = (tap / (taps - 1) - 0.5) * motion;
    const [dx, dy] = [
      Math.round(off * Math.cos(motionAngle)),
      Math.round(off * Math.sin(motionAngle)),
    ];
    for (let y = 0; y < height; y++) {
      const from = Math.min(height - 1, Math.max(0, y + dy)) * width;
      for (let x = 0; x < width; x++) {
        const source = from + Math.min(width - 1, Math.max(0, x + dx));
        values[y * width + x]! += before[source]! / taps;
      }
    }
  }
}
