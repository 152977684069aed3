/**
 * What coding a photo in blocks of 8 × 8 px does to it: each block's cosine coefficients are
 * rounded to whole steps. Steps: ITU-T T.81 (09/92), annex K, table K.1 (luminance).
 */
const STEPS = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56,
  14, 17, 22, 29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113,
  92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];

const COSINES = Float64Array.from({ length: 64 }, (_, i) => {
  const [k, n] = [i >> 3, i & 7];
  return Math.cos(((2 * n + 1) * k * Math.PI) / 16) * (k === 0 ? Math.SQRT1_2 : 1) * 0.5;
});

/** Codes and decodes in place; `quality` 1 to 99, finer steps the higher (common practice). */
export function codedAsPhoto(
  pixels: Uint8Array,
  width: number,
  height: number,
  quality: number,
): void {
  const share = quality < 50 ? 50 / quality : 2 - quality / 50;
  const steps = Float64Array.from(STEPS, (step) => Math.max(1, step * share));
  const block = new Float64Array(64);
  for (let top = 0; top + 8 <= height; top += 8) {
    for (let left = 0; left + 8 <= width; left += 8) {
      for (let i = 0; i < 64; i++) {
        block[i] = pixels[(top + (i >> 3)) * width + left + (i & 7)]! - 128;
      }
      rounded(block, steps);
      for (let i = 0; i < 64; i++) {
        const grey = block[i]! + 128.5;
        pixels[(top + (i >> 3)) * width + left + (i & 7)] = Math.min(255, Math.max(0, grey));
      }
    }
  }
}

function rounded(block: Float64Array, steps: Float64Array): void {
  for (let i = 0; i < 8; i++) forward(block, 8 * i, 1);
  for (let i = 0; i < 8; i++) forward(block, i, 8);
  for (let i = 0; i < 64; i++) block[i] = Math.round(block[i]! / steps[i]!) * steps[i]!;
  for (let i = 0; i < 8; i++) backward(block, i, 8);
  for (let i = 0; i < 8; i++) backward(block, 8 * i, 1);
}

const half = new Float64Array(8);

/** Eight samples to eight coefficients; the cosines are even or odd about the middle. */
function forward(block: Float64Array, start: number, stride: number): void {
  for (let n = 0; n < 4; n++) {
    const [near, far] = [block[start + n * stride]!, block[start + (7 - n) * stride]!];
    half[n] = near + far;
    half[n + 4] = near - far;
  }
  for (let k = 0; k < 8; k++) {
    const from = k & 1 ? 4 : 0;
    let sum = 0;
    for (let n = 0; n < 4; n++) sum += half[from + n]! * COSINES[8 * k + n]!;
    block[start + k * stride] = sum;
  }
}

function backward(block: Float64Array, start: number, stride: number): void {
  for (let k = 0; k < 8; k++) half[k] = block[start + k * stride]!;
  for (let n = 0; n < 4; n++) {
    let [even, odd] = [0, 0];
    for (let k = 0; k < 8; k += 2) {
      even += half[k]! * COSINES[8 * k + n]!;
      odd += half[k + 1]! * COSINES[8 * k + 8 + n]!;
    }
    block[start + n * stride] = even + odd;
    block[start + (7 - n) * stride] = even - odd;
  }
}
