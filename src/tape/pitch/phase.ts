import { type Carrier, toneAt } from '../numerics/tone.ts';
import { type AlongRow, alongRow, centred, type FromCentre, type Space } from '../picture/space.ts';
import { fromCentre, type Graduated } from './along.ts';
import {
  LEADING_QUALITY,
  NEIGHBOURS,
  PHASE_LONGEST_PITCH,
  PHASE_SHORTEST_PITCH,
} from './limits.ts';
import { densityAt, graduationAt, type PositionModel, type TrackedPhase } from './position.ts';

/** The phase of the row against the model, measured in a bell-shaped window about one place. */
export interface PhasePoint<S extends Space = Space> extends TrackedPhase<S> {
  /** t + centre. */
  readonly u: AlongRow<S>;
  /** Strength of the tone, in units of the signal. */
  readonly amplitude: number;
}

type Loose<S extends Space> = { -readonly [name in keyof PhasePoint<S>]: PhasePoint<S>[name] };

/** The pitch (px) the windows at t are cut to. */
export const windowPitch = <S extends Space>(model: PositionModel<S>, t: FromCentre<NoInfer<S>>) =>
  Math.min(PHASE_LONGEST_PITCH, Math.max(PHASE_SHORTEST_PITCH, 1 / Math.abs(densityAt(model, t))));

/** The tone of the model over `length` px of the row, starting at t = `from`. */
export function carrierOf<S extends Space>(
  model: PositionModel<S>,
  from: FromCentre<NoInfer<S>>,
  length: number,
): Carrier {
  const cosine = new Float64Array(length);
  const sine = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const turn = 2 * Math.PI * graduationAt(model, centred(from + i));
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
export function phaseTrack<S extends Space>(
  signal: Float32Array,
  from: AlongRow<NoInfer<S>>,
  centre: AlongRow<NoInfer<S>>,
  model: PositionModel<S>,
  sigmaPitches: number,
): PhasePoint<S>[] {
  const row: Graduated<S> = { model, centre };
  const carrier = carrierOf(model, fromCentre(row, from), signal.length);
  const track: Loose<S>[] = [];
  let u: AlongRow<S> = from;
  while (u < from + signal.length) {
    const t = fromCentre(row, u);
    const pitch = windowPitch(model, t);
    const { phase, quality, amplitude } = toneAt(signal, carrier, u - from, pitch * sigmaPitches);
    track.push({ u, t, phase, quality, amplitude, pitch });
    u = alongRow(u + pitch);
  }
  unwrap(track);
  return track;
}

function unwrap<S extends Space>(track: Loose<S>[]): void {
  const start = steadiest(track);
  for (const direction of [1, -1]) {
    let before = track[start]?.phase ?? 0;
    for (let i = start + direction; i >= 0 && i < track.length; i += direction) {
      const place = track[i] as Loose<S>;
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
