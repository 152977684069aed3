import type { Field } from '../picture/field.ts';
import { DARKER_LOG_GREY, DARKER_SPREADS, LEAST_SAMPLES, NEAR_ROWS } from './limits.ts';

export interface Ink {
  /** 1 where there is ink, else 0. */
  readonly ink: Uint8Array;
  /** How bright the ground is around each pixel, in the field's own measure. */
  readonly ground: Float32Array;
}

/**
 * Tells ink from ground. Each pixel is compared only with what lies up to `reach` pixels left and
 * right of it, along the tape, so that the tape's own edges and stripes leave no ink but along
 * their outlines.
 */
export function inkOf(field: Field, reach: number): Ink {
  const { width, height, values } = field;
  const ink = new Uint8Array(width * height);
  const ground = new Float32Array(width * height);
  const sums = runningSums(width);
  const { sumTo, squaresTo, countTo } = sums;
  for (let y = 0; y < Math.min(NEAR_ROWS, height); y++) sums.add(values, y, 1);
  for (let y = 0; y < height; y++) {
    if (y + NEAR_ROWS < height) sums.add(values, y + NEAR_ROWS, 1);
    if (y > NEAR_ROWS) sums.add(values, y - NEAR_ROWS - 1, -1);
    sums.accumulate();
    for (let x = 0; x < width; x++) {
      const left = x > reach ? x - reach : 0;
      const right = x + reach < width ? x + reach + 1 : width;
      const samples = (countTo[right] as number) - (countTo[left] as number);
      if (samples < LEAST_SAMPLES) continue;
      const mean = ((sumTo[right] as number) - (sumTo[left] as number)) / samples;
      const meanSquare = ((squaresTo[right] as number) - (squaresTo[left] as number)) / samples;
      const spread = Math.sqrt(Math.max(0, meanSquare - mean * mean));
      const at = y * width + x;
      const darker = Math.max(DARKER_LOG_GREY, DARKER_SPREADS * spread);
      ground[at] = mean + 0.5 * spread;
      if ((values[at] as number) < mean - darker) ink[at] = 1;
    }
  }
  return { ink, ground };
}

/** Sums over a few rows, of which a stretch of columns is a difference of two. */
function runningSums(width: number) {
  const [sum, squares, count] = [0, 0, 0].map(() => new Float64Array(width)) as Sums;
  const [sumTo, squaresTo, countTo] = [0, 0, 0].map(() => new Float64Array(width + 1)) as Sums;
  return {
    /** From the left edge to before each column, over the rows taken in, since the last `accumulate`. */
    sumTo,
    squaresTo,
    countTo,
    /** Takes a row in (sign 1) or out (−1). */
    add(values: Float32Array, y: number, sign: number) {
      for (let x = 0; x < width; x++) {
        const value = values[y * width + x] as number;
        if (Number.isNaN(value)) continue;
        sum[x] = (sum[x] as number) + sign * value;
        squares[x] = (squares[x] as number) + sign * value * value;
        count[x] = (count[x] as number) + sign;
      }
    },
    accumulate() {
      for (let x = 0; x < width; x++) {
        sumTo[x + 1] = (sumTo[x] as number) + (sum[x] as number);
        squaresTo[x + 1] = (squaresTo[x] as number) + (squares[x] as number);
        countTo[x + 1] = (countTo[x] as number) + (count[x] as number);
      }
    },
  };
}

type Sums = [Float64Array, Float64Array, Float64Array];
