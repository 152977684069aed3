import { bandSignal, type Strip, smoothed } from '../frame/strip.ts';
import type { Carrier } from '../numerics/tone.ts';
import { alongRow } from '../picture/space.ts';
import { fromCentre } from './along.ts';
import {
  HOP_PITCHES,
  PHASE_REACH,
  PHASE_SHEAR_FEWEST_PLACES,
  PHASE_SHEAR_LEAST_LIKENESS,
  PHASE_SHEAR_OUTLIER,
  PHASE_SHEAR_ROUNDS,
  REACH_SIGMAS,
  SIGMA_PITCHES,
} from './limits.ts';
import { carrierOf, windowPitch } from './phase.ts';
import type { RowPitch } from './pitch-spectrum.ts';
import { agreedShear, type LocalShear } from './shear.ts';

/**
 * By how much the strokes lean from the frame, from the phase of the graduations' own frequency
 * in one row against the next: stripes and weave of the cloth have other frequencies. Null when
 * fewer than 6 places tell.
 */
export function shearFromPhase(strip: Strip<'measuring'>, pitch: RowPitch) {
  const signals = rowSignals(strip, pitch.smoothing / 2);
  const carrier = carrierOf(pitch.model, fromCentre(pitch, strip.from), strip.width);
  const half = Math.max(1, strip.width / 2);
  const places: LocalShear[] = [];
  let place = 0;
  while (place < strip.width) {
    const step = windowPitch(pitch.model, fromCentre(pitch, alongRow(place + strip.from)));
    const { turns, weight } = turnPerRow(signals, carrier, place, SIGMA_PITCHES * step);
    if (weight > PHASE_SHEAR_LEAST_LIKENESS) {
      places.push({ place: (place - half) / half, shear: turns * step, weight });
    }
    place += HOP_PITCHES * step;
  }
  if (places.length < PHASE_SHEAR_FEWEST_PLACES) return null;
  const line = agreedShear(places, PHASE_SHEAR_OUTLIER, PHASE_SHEAR_ROUNDS, 0);
  if (!line) return null;
  const rate = line.slope / half;
  // A stroke that moves on along the row turns its phase back.
  return { shear: -(line.level - rate * (strip.from + half)), rate: -rate };
}

/** One signal for each row near the middle, averaged with both its neighbours. */
function rowSignals(strip: Strip<'measuring'>, smoothing: number): Float32Array[] {
  const signals: Float32Array[] = [];
  for (let v = 1 - PHASE_REACH; v < PHASE_REACH; v++) {
    const signal = bandSignal(strip, v - 1, v + 1);
    signals.push(smoothing ? smoothed(signal, smoothing) : signal);
  }
  return signals;
}

/** Turns of phase from one row to the next about a place, and how alike the rows are (0 to 1). */
function turnPerRow(
  signals: readonly Float32Array[],
  carrier: Carrier,
  place: number,
  sigma: number,
) {
  const lens = lensAt(carrier, place, sigma);
  let [real, imaginary] = [0, 0];
  let before: readonly [number, number] | null = null;
  for (const signal of signals) {
    const tone = toneThrough(lens, signal);
    if (before) {
      real += before[0] * tone[0] + before[1] * tone[1];
      imaginary += before[0] * tone[1] - before[1] * tone[0];
    }
    before = tone;
  }
  return {
    turns: Math.atan2(imaginary, real) / (2 * Math.PI),
    weight: Math.hypot(real, imaginary) / (signals.length - 1),
  };
}

/** The bell of a window and the tone under it: made once, used on every row. */
interface Lens {
  readonly start: number;
  readonly bell: Float64Array;
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
  readonly total: number;
  readonly meanCosine: number;
  readonly meanSine: number;
}

function lensAt(carrier: Carrier, place: number, sigma: number): Lens {
  const reach = Math.ceil(REACH_SIGMAS * sigma);
  const start = Math.max(0, Math.round(place - reach));
  const end = Math.min(carrier.cosine.length - 1, Math.round(place + reach));
  const bell = new Float64Array(end - start + 1);
  const cosine = carrier.cosine.slice(start, end + 1);
  const sine = carrier.sine.slice(start, end + 1);
  let [total, meanCosine, meanSine] = [0, 0, 0];
  for (let j = 0; j < bell.length; j++) {
    const x = (start + j - place) / sigma;
    const weight = Math.exp(-0.5 * x * x);
    bell[j] = weight;
    cosine[j] = weight * (cosine[j] as number);
    sine[j] = weight * (sine[j] as number);
    total += weight;
    meanCosine += cosine[j] as number;
    meanSine += sine[j] as number;
  }
  return { start, bell, cosine, sine, total, meanCosine, meanSine };
}

/** The tone of one row, 1 in size when it is all the row has: its mean is taken out of the sums. */
function toneThrough(lens: Lens, signal: Float32Array): readonly [number, number] {
  const { start, bell, cosine, sine, total } = lens;
  let [sum, squares, real, imaginary] = [0, 0, 0, 0];
  for (let j = 0; j < bell.length; j++) {
    const value = signal[start + j] as number;
    const weighted = (bell[j] as number) * value;
    sum += weighted;
    squares += weighted * value;
    real += (cosine[j] as number) * value;
    imaginary -= (sine[j] as number) * value;
  }
  const mean = sum / total;
  const energy = Math.max(0, squares - mean * sum);
  const size = Math.sqrt(energy * total) + 1e-6;
  return [(real - mean * lens.meanCosine) / size, (imaginary + mean * lens.meanSine) / size];
}
