import { fft } from '../numerics/fourier.ts';
import { trendBasis, withoutTrend } from '../numerics/trend.ts';
import {
  BEND_STEP,
  FEWEST_WINDOWS,
  FREQUENCY_STEP,
  HOP,
  LOWEST_BIN,
  MOST_BEND,
  NOISE,
  NOISE_SHARE,
  SAMPLES,
  SHORTEST_SEEN_PX,
  SPECTRA_BLANK,
  SPECTRA_TREND_EVERY,
  WINDOW,
} from './limits.ts';

const HALF = SAMPLES / 2;
/** Sums of some dozens of numbers are rounded by far less than this share. */
const ROUNDING = 1e-9;
const HIGHEST_BIN = SAMPLES / SHORTEST_SEEN_PX;

/** Short-time spectra of a row, one window after another. */
export interface Spectra {
  /** Places of the windows' middles, in px from the signal's start. */
  readonly middles: readonly number[];
  /** Strength by window, then by bin (HALF bins a window): √½ for a pure tone, 0 out of range. */
  readonly strengths: Float32Array;
}

const trend = trendBasis(WINDOW, SPECTRA_TREND_EVERY);
const bell = Float64Array.from(
  { length: WINDOW },
  (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / WINDOW),
);

/** Spectra of a signal with one value per px; none when it is shorter than a window. */
export function spectraOf(signal: Float32Array): Spectra {
  const count = Math.max(0, Math.floor((signal.length - WINDOW) / HOP) + 1);
  const strengths = new Float32Array(count * HALF);
  const real = new Float64Array(SAMPLES);
  const imaginary = new Float64Array(SAMPLES);
  // A real signal leaves half of a transform unused: two windows go through at once.
  for (let pair = 0; pair < count; pair += 2) {
    const first = load(signal, pair * HOP, real);
    const second = pair + 1 < count ? load(signal, (pair + 1) * HOP, imaginary) : 0;
    if (pair + 1 >= count) imaginary.fill(0);
    fft(real, imaginary, WINDOW);
    unpack(real, imaginary, 1, first, strengths, pair * HALF);
    if (pair + 1 < count) unpack(real, imaginary, -1, second, strengths, (pair + 1) * HALF);
  }
  const middles = Array.from({ length: count }, (_, i) => i * HOP + WINDOW / 2);
  return { middles, strengths };
}

/** One window without its trend under a Hann bell, zeros after it; √2 times a pure tone's size. */
function load(signal: Float32Array, start: number, into: Float64Array): number {
  const flat = new Float64Array(WINDOW);
  withoutTrend(signal, start, trend, SPECTRA_TREND_EVERY, flat);
  into.fill(0, WINDOW);
  let energy = 0;
  for (let i = 0; i < WINDOW; i++) {
    const value = flat[i] as number;
    const weighted = value * (bell[i] as number);
    into[i] = weighted;
    energy += value * weighted;
  }
  return Math.sqrt((energy * WINDOW) / 2) + SPECTRA_BLANK * WINDOW;
}

/** The first (sign 1) or second (sign −1) of two real signals transformed as one complex one. */
function unpack(
  real: Float64Array,
  imaginary: Float64Array,
  sign: 1 | -1,
  tone: number,
  strengths: Float32Array,
  at: number,
): void {
  for (let bin = LOWEST_BIN + 1; bin < HIGHEST_BIN; bin++) {
    const mirror = SAMPLES - bin;
    const re = (real[bin] as number) + sign * (real[mirror] as number);
    const im = (imaginary[bin] as number) - sign * (imaginary[mirror] as number);
    const strength = Math.sqrt(re * re + im * im) / (2 * tone);
    strengths[at + bin] = strength > NOISE ? strength : NOISE_SHARE * strength;
  }
}

/** A smooth change of frequency along the row: at place x in −1 to 1, f0/(1 + bend·x)². */
export interface Course {
  /** Graduations per px in the middle of the row. */
  readonly frequency: number;
  readonly bend: number;
  /** Mean strength over the windows; a short row is divided by 6 windows all the same. */
  readonly score: number;
}

/**
 * The course that gathers most strength, of frequencies from `lowest` to `highest` per px.
 *
 * @param least a course that scores no more than this need not be found.
 */
export function bestCourse(
  { middles, strengths }: Spectra,
  length: number,
  lowest: number,
  highest: number,
  least = 0,
): Course | null {
  const bends: number[] = [];
  for (let bend = -MOST_BEND; bend <= MOST_BEND + 0.001; bend += BEND_STEP) bends.push(bend);
  const windows = middles.length;
  const reach = (length - 1) / 2;
  // Bins per unit of middle frequency, by bend and window: the inner loop is one multiplication.
  const rates = Float64Array.from({ length: bends.length * windows }, (_, i) => {
    const place = ((middles[i % windows] as number) - reach) / reach;
    return SAMPLES / (1 + (bends[Math.floor(i / windows)] as number) * place) ** 2;
  });
  const rest = mostToCome(strengths, windows);
  let best: Course | null = null;
  // A little less, as what is compared was divided.
  let most = least ? least * Math.max(FEWEST_WINDOWS, windows) * (1 - ROUNDING) : -1;
  const end = Math.log(highest);
  for (let log = Math.log(lowest); log < end; log += FREQUENCY_STEP) {
    const frequency = Math.exp(log);
    for (let b = 0; b < bends.length; b++) {
      const sum = gathered(strengths, rates, b * windows, rest, frequency, most);
      if (sum <= most) continue;
      most = sum;
      const score = sum / Math.max(FEWEST_WINDOWS, windows);
      best = { frequency, bend: bends[b] as number, score };
    }
  }
  return best;
}

/** What each window and all after it can add at most, a little more for rounding. */
function mostToCome(strengths: Float32Array, windows: number): Float64Array {
  const rest = new Float64Array(windows + 1);
  for (let i = windows - 1; i >= 0; i--) {
    let strongest = 0;
    for (let at = i * HALF; at < (i + 1) * HALF; at++) {
      strongest = Math.max(strongest, strengths[at] as number);
    }
    rest[i] = ((rest[i + 1] as number) + strongest) * (1 + ROUNDING);
  }
  return rest;
}

/** The strength along a course; what was summed up so far, once it can no longer come to more than `most`. */
function gathered(
  strengths: Float32Array,
  rates: Float64Array,
  first: number,
  rest: Float64Array,
  frequency: number,
  most: number,
): number {
  const windows = rest.length - 1;
  let sum = 0;
  for (let i = 0; i < windows; i++) {
    if (sum + (rest[i] as number) <= most) return sum;
    const bin = (frequency * (rates[first + i] as number) + 0.5) | 0;
    if (bin < HALF) sum += strengths[i * HALF + bin] as number;
  }
  return sum;
}
