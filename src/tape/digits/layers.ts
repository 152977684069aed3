/**
 * Layers of a small network on typed arrays. Samples lie row after row, the numbers of all planes at
 * a place beside each other; weights lie by the output they lead to, but where `byInput` is said.
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

/** Weights by the input they come from, those to all outputs beside each other; into an array that may be given. */
export function byInput(
  weights: Float32Array,
  outputs: number,
  into: Float32Array = new Float32Array(weights.length),
): Float32Array {
  const inputs = weights.length / outputs;
  for (let to = 0; to < outputs; to++) {
    for (let i = 0; i < inputs; i++) into[i * outputs + to] = weights[to * inputs + i] as number;
  }
  return into;
}

/**
 * 3 × 3 weights, row after row, from every plane, with its edge of zeros, to every plane of `out`,
 * which has none. Not yet cut off at 0. Half of what is taken is 0 and adds nothing: what is not is
 * sought once for all outputs, of which six, a divisor of their number, are summed up at a time.
 *
 * @param weights `byInput`
 */
export function convolve(
  from: Float32Array,
  { count, width, height }: Planes,
  weights: Float32Array,
  biases: Float32Array,
  out: Float32Array,
): void {
  const outputs = biases.length;
  const values = new Float64Array(9 * count);
  const firsts = new Int32Array(9 * count);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let [seen, first] = [0, 0];
      for (let down = 0; down < 3; down++) {
        const start = ((y + down) * (width + 2) + x) * count;
        for (let at = start; at < start + 3 * count; at++, first += outputs) {
          const value = from[at] as number;
          if (value === 0) continue;
          values[seen] = value;
          firsts[seen++] = first;
        }
      }
      const to = (y * width + x) * outputs;
      for (let output = 0; output < outputs; output += 6) {
        let a = biases[output] as number;
        let b = biases[output + 1] as number;
        let c = biases[output + 2] as number;
        let d = biases[output + 3] as number;
        let e = biases[output + 4] as number;
        let f = biases[output + 5] as number;
        for (let i = 0; i < seen; i++) {
          const value = values[i] as number;
          const weight = (firsts[i] as number) + output;
          a += value * (weights[weight] as number);
          b += value * (weights[weight + 1] as number);
          c += value * (weights[weight + 2] as number);
          d += value * (weights[weight + 3] as number);
          e += value * (weights[weight + 4] as number);
          f += value * (weights[weight + 5] as number);
        }
        out[to + output] = a;
        out[to + output + 1] = b;
        out[to + output + 2] = c;
        out[to + output + 3] = d;
        out[to + output + 4] = e;
        out[to + output + 5] = f;
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
        let best = -1;
        let most = 0;
        const [upper, right] = [from[at] as number, from[at + count] as number];
        const [lower, last] = [from[at + below] as number, from[at + below + count] as number];
        if (upper > most) {
          most = upper;
          best = at;
        }
        if (right > most) {
          most = right;
          best = at + count;
        }
        if (lower > most) {
          most = lower;
          best = at + below;
        }
        if (last > most) {
          most = last;
          best = at + below + count;
        }
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
