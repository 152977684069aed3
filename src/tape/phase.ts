import { densityAt, graduationAt, type PositionModel, type TrackedPhase } from './position.ts';

/** The phase of the row against the model, measured in a bell-shaped window about one place. */
export interface PhasePoint extends TrackedPhase {
  /** Px along the row in its frame: t + centre. */
  readonly u: number;
  /** Strength of the tone, in units of the signal. */
  readonly amplitude: number;
}

/** A signal of the row turned back by its model: at every px, the tone one graduation long. */
interface Carrier {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

type Loose = { -readonly [name in keyof PhasePoint]: PhasePoint[name] };

/** Px: what a window is fitted to, whatever the model says where it goes astray. */
const SHORTEST_PITCH = 2.5;
const LONGEST_PITCH = 120;
/** The window's half width, in its sigmas. */
const REACH = 2.2;
/** Signals are logarithms of grey: a flat one has no phase rather than a perfect one. */
const NO_INK = 1e-4;
/** A place below this quality doesn't lead the unwrapping. */
const LEADING_QUALITY = 0.35;

/** The pitch (px) the windows at t are cut to. */
export const windowPitch = (model: PositionModel, t: number) =>
  Math.min(LONGEST_PITCH, Math.max(SHORTEST_PITCH, 1 / Math.abs(densityAt(model, t))));

/** The tone of the model over `length` px of the row, starting at t = `from`. */
export function carrierOf(model: PositionModel, from: number, length: number): Carrier {
  const cosine = new Float64Array(length);
  const sine = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const turn = 2 * Math.PI * graduationAt(model, from + i);
    cosine[i] = Math.cos(turn);
    sine[i] = Math.sin(turn);
  }
  return { cosine, sine };
}

/**
 * Follows the graduations along the row: about one place per pitch, the phase of the signal
 * against the model in a window of `sigmaPitches` pitches (1 sigma), unwrapped outwards from the
 * steadiest stretch. `signal` has one value per px, the first at u = `from`; t is u - `centre`.
 */
export function phaseTrack(
  signal: Float32Array,
  from: number,
  centre: number,
  model: PositionModel,
  sigmaPitches: number,
): PhasePoint[] {
  const carrier = carrierOf(model, from - centre, signal.length);
  const track: Loose[] = [];
  let u = from;
  while (u < from + signal.length) {
    const pitch = windowPitch(model, u - centre);
    const { phase, quality, amplitude } = toneAt(signal, carrier, u - from, pitch * sigmaPitches);
    track.push({ u, t: u - centre, phase, quality, amplitude, pitch });
    u += pitch;
  }
  unwrap(track);
  return track;
}

/**
 * One pass over the window: sums with the mean still in, and the mean taken out of the sums.
 * The bell is built by its ratio of neighbours, which itself shrinks by a constant: no exp per px.
 */
function toneAt(signal: Float32Array, { cosine, sine }: Carrier, place: number, sigma: number) {
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

function unwrap(track: Loose[]): void {
  const start = steadiest(track);
  for (const direction of [1, -1]) {
    let before = track[start]?.phase ?? 0;
    for (let i = start + direction; i >= 0 && i < track.length; i += direction) {
      const place = track[i] as Loose;
      place.phase -= Math.round(place.phase - before);
      if (place.quality > LEADING_QUALITY) before = place.phase;
    }
  }
}

/** The middle of the nine neighbours with the best quality; the first place when there are fewer. */
function steadiest(track: readonly PhasePoint[]): number {
  let best = 0;
  let most = -1;
  for (let i = 4; i < track.length - 4; i++) {
    let sum = 0;
    for (let j = i - 4; j <= i + 4; j++) sum += (track[j] as PhasePoint).quality;
    if (sum > most) {
      most = sum;
      best = i;
    }
  }
  return best;
}
