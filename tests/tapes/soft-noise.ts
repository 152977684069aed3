import type { Random } from './random.ts';

/** A square of smooth noise that repeats without a seam; mean 0, standard deviation 1. */
export function softNoise(random: Random, size: number, radiusX: number, radiusY = radiusX) {
  let values = Float32Array.from({ length: size * size }, () => random.unit() - 0.5);
  for (let pass = 0; pass < 2; pass++) {
    values = averaged(values, size, radiusX, 1, size);
    values = averaged(values, size, radiusY, size, 1);
  }
  return evened(values);
}

/** Running mean along one direction, round the seam. */
function averaged(
  values: Float32Array<ArrayBuffer>,
  size: number,
  radius: number,
  step: number,
  line: number,
): Float32Array<ArrayBuffer> {
  if (radius < 1) return values;
  const made = new Float32Array(values.length);
  const wide = 2 * radius + 1;
  for (let row = 0; row < size; row++) {
    const start = row * line;
    const read = (i: number) => values[start + (((i % size) + size) % size) * step] as number;
    let sum = 0;
    for (let i = -radius; i <= radius; i++) sum += read(i);
    for (let i = 0; i < size; i++) {
      made[start + i * step] = sum / wide;
      sum += read(i + radius + 1) - read(i - radius);
    }
  }
  return made;
}

function evened(values: Float32Array<ArrayBuffer>): Float32Array<ArrayBuffer> {
  let sum = 0;
  let squares = 0;
  for (const value of values) {
    sum += value;
    squares += value * value;
  }
  const mean = sum / values.length;
  const spread = Math.sqrt(Math.max(1e-12, squares / values.length - mean * mean));
  return values.map((value) => (value - mean) / spread);
}
