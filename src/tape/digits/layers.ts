/**
 * Layers of a small network on typed arrays. Samples lie row after row, the numbers of all planes at
 * a place beside each other; weights lie by the output they lead to.
 */

/** How many planes of which size. Those that a convolution takes have an edge of zeros, 1 wide, besides. */
export interface Planes {
  readonly count: number;
  readonly width: number;
  readonly height: number;
}

/** Numbers in a stack of planes with an edge around each. */
export function edgedSize({ count, width, height }: Planes, edge: number): number {
  return count * (width + 2 * edge) * (height + 2 * edge);
}

/**
 * 3 × 3 weights, row after row, from every plane, with its edge of zeros, to every plane of `out`,
 * which has none. Not yet cut off at 0. Planes are a multiple of 4 wide: four samples share the
 * weights that are fetched.
 */
export function convolve(
  from: Float32Array,
  { count, width, height }: Planes,
  weights: Float32Array,
  biases: Float32Array,
  out: Float32Array,
): void {
  const planes = biases.length;
  const gap = (width - 1) * count;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x += 4) {
      const start = (y * (width + 2) + x) * count;
      let weight = 0;
      for (let plane = 0; plane < planes; plane++) {
        let a = biases[plane] as number;
        let [b, c, d] = [a, a, a];
        let at = start;
        for (let down = 0; down < 3; down++, at += gap) {
          for (const end = at + 3 * count; at < end; at++) {
            const by = weights[weight++] as number;
            a += by * (from[at] as number);
            b += by * (from[at + count] as number);
            c += by * (from[at + 2 * count] as number);
            d += by * (from[at + 3 * count] as number);
          }
        }
        const to = (y * width + x) * planes + plane;
        out[to] = a;
        out[to + planes] = b;
        out[to + 2 * planes] = c;
        out[to + 3 * planes] = d;
      }
    }
  }
}

/**
 * Half as wide and high: of each 2 × 2 samples the greatest, at least 0; `where` keeps which, or -1.
 *
 * @param edge of zeros around each plane of `out`, 0 or 1 wide.
 */
export function pool(
  from: Float32Array,
  { count, width, height }: Planes,
  out: Float32Array,
  where: Int32Array,
  edge: number,
): void {
  const below = width * count;
  let kept = 0;
  for (let y = 0; y < height; y += 2) {
    let to = ((y / 2 + edge) * (width / 2 + 2 * edge) + edge) * count;
    for (let x = 0; x < width; x += 2) {
      const start = y * below + x * count;
      for (let at = start; at < start + count; at++) {
        const lower = at + below;
        let [best, most] = [at, from[at] as number];
        const [right, under] = [from[at + count] as number, from[lower] as number];
        const last = from[lower + count] as number;
        if (right > most) [best, most] = [at + count, right];
        if (under > most) [best, most] = [lower, under];
        if (last > most) [best, most] = [lower + count, last];
        if (most <= 0) [best, most] = [-1, 0];
        out[to++] = most;
        where[kept++] = best;
      }
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
