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
export function inkOf({ width, height, values }: Field, reach: number): Ink {
  const ink = new Uint8Array(width * height);
  const ground = new Float32Array(width * height);
  const sums = runningSums(width);
  const { sumTo, squaresTo, countTo } = sums;
  const beyond = new Float32Array(width).fill(Number.NaN);
  const row = (y: number) =>
    y < 0 || y >= height ? beyond : values.subarray(y * width, (y + 1) * width);
  for (let y = -NEAR_ROWS; y < height; y++) {
    sums.moveOn(row(y + NEAR_ROWS), row(y - NEAR_ROWS - 1));
    if (y < 0) continue;
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
    /** From the left edge to before each column, over the rows that are taken in. */
    sumTo,
    squaresTo,
    countTo,
    /** Takes a row in, and one out. */
    moveOn(coming: Float32Array, going: Float32Array) {
      let [toSum, toSquares, toCount] = [0, 0, 0];
      for (let x = 0; x < width; x++) {
        let ofColumn = sum[x] as number;
        let squaresOfColumn = squares[x] as number;
        let countOfColumn = count[x] as number;
        const next = coming[x] as number;
        if (!Number.isNaN(next)) {
          ofColumn += next;
          squaresOfColumn += next * next;
          countOfColumn++;
        }
        const last = going[x] as number;
        if (!Number.isNaN(last)) {
          ofColumn -= last;
          squaresOfColumn -= last * last;
          countOfColumn--;
        }
        sum[x] = ofColumn;
        squares[x] = squaresOfColumn;
        count[x] = countOfColumn;
        toSum += ofColumn;
        toSquares += squaresOfColumn;
        toCount += countOfColumn;
        sumTo[x + 1] = toSum;
        squaresTo[x + 1] = toSquares;
        countTo[x + 1] = toCount;
      }
    },
  };
}

type Sums = [Float64Array, Float64Array, Float64Array];
