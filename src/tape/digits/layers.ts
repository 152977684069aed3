/**
 * Layers of a small network on typed arrays. A stack of planes lies plane after plane, each row
 * after row; weights lie by the output they lead to.
 */

/** How many planes of which size. */
export interface Planes {
  readonly count: number;
  readonly width: number;
  readonly height: number;
}

/** 3 × 3 weights from every plane to every plane of `out`; beyond the edge is 0. Not yet cut off at 0. */
export function convolve(
  from: Float32Array,
  { count, width, height }: Planes,
  weights: Float32Array,
  biases: Float32Array,
  out: Float32Array,
): void {
  const size = width * height;
  for (let to = 0; to < biases.length; to++) {
    const plane = out.subarray(to * size, (to + 1) * size).fill(biases[to] as number);
    for (let tap = 0; tap < count * 9; tap++) {
      const weight = weights[to * count * 9 + tap] as number;
      const source = Math.floor(tap / 9) * size;
      const down = Math.floor((tap % 9) / 3) - 1;
      const along = (tap % 3) - 1;
      const last = Math.min(width, width - along);
      for (let y = Math.max(0, -down); y < Math.min(height, height - down); y++) {
        const shift = source + down * width + along;
        for (let at = y * width + Math.max(0, -along); at < y * width + last; at++) {
          plane[at] = (plane[at] as number) + weight * (from[shift + at] as number);
        }
      }
    }
  }
}

/** Half as wide and high: of each 2 × 2 samples the greatest, at least 0; `where` keeps which, or -1. */
export function pool(
  from: Float32Array,
  { count, width, height }: Planes,
  out: Float32Array,
  where: Int32Array,
): void {
  let to = 0;
  for (let row = 0; row < count * height; row += 2) {
    for (let x = 0; x < width; x += 2) {
      const corner = row * width + x;
      let [best, most] = [-1, 0];
      for (const at of [corner, corner + 1, corner + width, corner + width + 1]) {
        if ((from[at] as number) > most) [best, most] = [at, from[at] as number];
      }
      where[to] = best;
      out[to++] = most;
    }
  }
}

/** Every number to every number of `out`. Not yet cut off at 0. */
export function connect(
  from: Float32Array,
  weights: Float32Array,
  biases: Float32Array,
  out: Float32Array,
): void {
  for (let to = 0; to < out.length; to++) {
    let sum = biases[to] as number;
    const start = to * from.length;
    for (let i = 0; i < from.length; i++) {
      sum += (weights[start + i] as number) * (from[i] as number);
    }
    out[to] = sum;
  }
}

/** What is below 0 becomes 0. */
export function cutOff(values: Float32Array): void {
  for (let i = 0; i < values.length; i++) if ((values[i] as number) < 0) values[i] = 0;
}
