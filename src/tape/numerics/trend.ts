/** Constant, slope and bend over a window: orthonormal over the samples that the trend is fitted to. */
export type TrendBasis = readonly Float64Array[];

/** The basis for windows of `length` px, fitted to every `every`-th of them. */
export function trendBasis(length: number, every: number): TrendBasis {
  const basis: Float64Array[] = [];
  for (const power of [0, 1, 2]) {
    const term = Float64Array.from({ length }, (_, i) => ((i - length / 2) / length) ** power);
    for (const known of basis) subtract(term, known, product(term, known, every));
    const size = Math.sqrt(product(term, term, every));
    basis.push(term.map((value) => value / size));
  }
  return basis;
}

/** Writes the window of the signal from `start` on, less its quadratic trend, into `out`. */
export function withoutTrend(
  signal: Float32Array,
  start: number,
  basis: TrendBasis,
  every: number,
  out: Float64Array,
): void {
  for (let i = 0; i < out.length; i++) out[i] = signal[start + i] as number;
  // Orthogonal terms: taking one out leaves the share of the others as it was.
  for (const term of basis) subtract(out, term, product(out, term, every));
}

function product(one: Float64Array, other: Float64Array, every: number): number {
  let sum = 0;
  for (let i = 0; i < one.length; i += every) sum += (one[i] as number) * (other[i] as number);
  return sum;
}

function subtract(from: Float64Array, term: Float64Array, share: number): void {
  for (let i = 0; i < from.length; i++) from[i] = (from[i] as number) - share * (term[i] as number);
}
