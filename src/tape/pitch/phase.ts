import { type Carrier, toneAt } from '../numerics/tone.ts';
import {
  LEADING_QUALITY,
  NEIGHBOURS,
  PHASE_LONGEST_PITCH,
  PHASE_SHORTEST_PITCH,
} from './limits.ts';
import { densityAt, graduationAt, type PositionModel, type TrackedPhase } from './position.ts';

/** The phase of the row against the model, measured in a bell-shaped window about one place. */
export interface PhasePoint extends TrackedPhase {
  /** Px along the row in its frame: t + centre. */
  readonly u: number;
  /** Strength of the tone, in units of the signal. */
  readonly amplitude: number;
}

type Loose = { -readonly [name in keyof PhasePoint]: PhasePoint[name] };

/** The pitch (px) the windows at t are cut to. */
export const windowPitch = (model: PositionModel, t: number) =>
  Math.min(PHASE_LONGEST_PITCH, Math.max(PHASE_SHORTEST_PITCH, 1 / Math.abs(densityAt(model, t))));

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

/** The middle of the neighbours with the best quality; the first place when there are fewer. */
function steadiest(track: readonly PhasePoint[]): number {
  let best = 0;
  let most = -1;
  for (let i = NEIGHBOURS; i < track.length - NEIGHBOURS; i++) {
    let sum = 0;
    for (let j = i - NEIGHBOURS; j <= i + NEIGHBOURS; j++) sum += (track[j] as PhasePoint).quality;
    if (sum > most) {
      most = sum;
      best = i;
    }
  }
  return best;
}
