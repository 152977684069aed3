import { NO_INK, REACH } from './limits.ts';
/** At every px of a signal, the pure tone it is measured against. */
export interface Carrier {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

/**
 * Phase, quality and amplitude of a signal against a tone in a bell-shaped window of `sigma` px
 * about the place (px from the signal's start). One pass: sums with the mean still in, and the
 * mean taken out of the sums. The bell is built by its ratio of neighbours, which itself shrinks by a constant: no exp per px.
 */
export function toneAt(
  signal: Float32Array,
  { cosine, sine }: Carrier,
  place: number,
  sigma: number,
) {
  const reach = Math.ceil(REACH * sigma);
  const start = Math.max(0, Math.round(place - reach));
  const end = Math.min(signal.length - 1, Math.round(place + reach));
  const first = (start - place) / sigma;
  const shrink = Math.exp(-1 / (sigma * sigma));
  let weight = Math.exp(-0.5 * first * first);
  let ratio = Math.exp(-(first + 0.5 / sigma) / sigma);
  let [total, sum, squares, real, imaginary, meanReal, meanImaginary] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = start; i <= end; i++) {
    const value = signal[i] as number;
    const weighted = weight * value;
    const c = cosine[i] as number;
    const s = sine[i] as number;
    total += weight;
    sum += weighted;
    squares += weighted * value;
    real += weighted * c;
    imaginary -= weighted * s;
    meanReal += weight * c;
    meanImaginary -= weight * s;
    weight *= ratio;
    ratio *= shrink;
  }
  const mean = sum / total;
  real -= mean * meanReal;
  imaginary -= mean * meanImaginary;
  const amplitude = Math.hypot(real, imaginary) / total;
  const deviation = Math.sqrt(Math.max(0, squares / total - mean * mean)) + NO_INK;
  return {
    phase: Math.atan2(imaginary, real) / (2 * Math.PI),
    quality: (amplitude * Math.SQRT2) / deviation,
    amplitude,
  };
}

export type ToneMeter = ReturnType<typeof toneMeter>;

/** Measures a steady tone of `frequency` that stands at graduation k at the place. */
export function toneMeter(signal: Float32Array) {
  const carrier: Carrier = {
    cosine: new Float64Array(signal.length),
    sine: new Float64Array(signal.length),
  };
  return (place: number, k: number, frequency: number, sigma: number) => {
    fillTone(carrier, place, k, frequency, Math.ceil(REACH * sigma) + 1);
    return toneAt(signal, carrier, place, sigma);
  };
}

/** A steady tone turns by the same angle at every px: no cosine per px. */
function fillTone(
  { cosine, sine }: Carrier,
  place: number,
  k: number,
  frequency: number,
  reach: number,
): void {
  const start = Math.max(0, Math.floor(place - reach));
  const end = Math.min(cosine.length - 1, Math.ceil(place + reach));
  const angle = 2 * Math.PI * (k + frequency * (start - place));
  const turnCosine = Math.cos(2 * Math.PI * frequency);
  const turnSine = Math.sin(2 * Math.PI * frequency);
  let c = Math.cos(angle);
  let s = Math.sin(angle);
  for (let i = start; i <= end; i++) {
    cosine[i] = c;
    sine[i] = s;
    const turned = c * turnCosine - s * turnSine;
    s = s * turnCosine + c * turnSine;
    c = turned;
  }
}
