/** Cosines and sines of one turn in `size` steps, made once for each size. */
const turns = new Map<number, { cosine: Float64Array; sine: Float64Array }>();

function turnOf(size: number) {
  const known = turns.get(size);
  if (known) return known;
  const angle = (_: unknown, i: number) => (2 * Math.PI * i) / size;
  const angles = Float64Array.from({ length: size >> 1 }, angle);
  const turn = { cosine: angles.map(Math.cos), sine: angles.map(Math.sin) };
  turns.set(size, turn);
  return turn;
}

/**
 * The discrete Fourier transform, in place: X[k] = sum of x[n]·exp(-2πi·kn/N), radix 2.
 * Both parts have the same length, a power of two; of both only the first `filled`, a power of two
 * as well, may be other than 0, which saves the first steps.
 */
export function fft(real: Float64Array, imaginary: Float64Array, filled = real.length): void {
  const size = real.length;
  if (size === 0 || size & (size - 1) || imaginary.length !== size) {
    throw new Error(`no transform of ${size} and ${imaginary.length} values`);
  }
  reorder(real, imaginary);
  const { cosine, sine } = turnOf(size);
  const alike = size / filled;
  for (let at = 1; at < size && alike > 1; at++) {
    // What stands beside a value is 0 by now: its first steps only spread the value.
    if (at % alike === 0) continue;
    real[at] = real[at - 1] as number;
    imaginary[at] = imaginary[at - 1] as number;
  }
  for (let length = 2 * alike; length <= size; length <<= 1) {
    const half = length >> 1;
    const stride = size / length;
    for (let block = 0; block < size; block += length) {
      for (let k = 0; k < half; k++) {
        const low = block + k;
        const high = low + half;
        const c = cosine[k * stride] as number;
        const s = sine[k * stride] as number;
        const re = real[high] as number;
        const im = imaginary[high] as number;
        const turnedRe = re * c + im * s;
        const turnedIm = im * c - re * s;
        const lowRe = real[low] as number;
        const lowIm = imaginary[low] as number;
        real[high] = lowRe - turnedRe;
        imaginary[high] = lowIm - turnedIm;
        real[low] = lowRe + turnedRe;
        imaginary[low] = lowIm + turnedIm;
      }
    }
  }
}

/** Each value goes to the place whose number has the same bits, backwards. */
function reorder(real: Float64Array, imaginary: Float64Array): void {
  const size = real.length;
  for (let i = 1, j = 0; i < size; i++) {
    let bit = size >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i >= j) continue;
    for (const part of [real, imaginary]) {
      const kept = part[i] as number;
      part[i] = part[j] as number;
      part[j] = kept;
    }
  }
}
