import { leastSquares } from '../numerics/solve.ts';
import { type ToneMeter, toneMeter } from '../numerics/tone.ts';
import { type AlongRow, alongRow } from '../picture/space.ts';
import { fromCentre } from './along.ts';
import {
  AMBIGUOUS,
  BELIEVED_PHASE,
  BELIEVED_QUALITY,
  FEWEST_TO_CURVE,
  FIRM_HAND,
  FORESEEN,
  LIGHT_HAND,
  LONG_MEMORY,
  LONG_RUN,
  LONGEST_GAP,
  MEMORY,
  MENDING_SIGMA,
  MOST_STEPS,
  PITCH_TRACKING_FEWEST,
  PITCH_TRACKING_LONGEST_PITCH,
  PITCH_TRACKING_SHORTEST_PITCH,
  SEED_SIGMA,
  STEADY,
  TRACK_SIGMA,
  WALK_SIGMA,
} from './limits.ts';
import { phaseTrack } from './phase.ts';
import type { Band, RowPitch } from './pitch-spectrum.ts';
import { fitProjective, graduationAt, type PositionModel } from './position.ts';
import { withResidual } from './residual.ts';

/** A place of the row with a likely pitch, from which it is followed both ways. */
export interface Seed {
  /** Px along the row, in its frame. */
  readonly u: AlongRow<'measuring'>;
  /** Px. */
  readonly pitch: number;
  readonly band: Band;
  readonly signal: Float32Array;
}

/** One step of the walk: graduation k stands at a place of the signal. */
interface Step {
  /** Px from the first value of the signal. */
  readonly place: number;
  readonly k: number;
  readonly quality: number;
}

/**
 * Follows the graduations from a seed outwards, each due where the last ones foretell it, and
 * fits the model with its residual to the walk. Null when the seed leads to fewer than 12.
 *
 * @param from u of the first value of the seed's signal.
 */
export function followed(seed: Seed, from: AlongRow<'measuring'>): RowPitch | null {
  const { signal, u: centre } = seed;
  const place = centre - from;
  const tone = toneMeter(signal);
  const pitch = mendedPitch(tone, place, seed.pitch);
  if (pitch === null) return null;
  const { quality } = tone(place, 0, 1 / seed.pitch, SEED_SIGMA * seed.pitch);
  const start = tone(place, 0, 1 / pitch, SEED_SIGMA * pitch).phase;
  const first: Step = { place, k: start, quality };
  const ahead = walk(tone, first, 1 / pitch, 1, signal.length);
  const behind = walk(tone, first, 1 / pitch, -1, signal.length);
  const steps = [...behind.slice(1).reverse(), ...ahead];
  if (steps.length < PITCH_TRACKING_FEWEST) return null;
  return fitted(seed, from, pitch, start, steps);
}

function fitted(
  { signal, u: centre, band }: Seed,
  from: AlongRow<'measuring'>,
  pitch: number,
  start: number,
  steps: readonly Step[],
): RowPitch {
  const along = (place: number) => alongRow<'measuring'>(place + from);
  const places = steps.map(({ place, k, quality }) => ({
    t: fromCentre({ centre }, along(place)),
    phase: k,
    quality,
    pitch,
  }));
  const level: PositionModel<'measuring'> = { a: 0, b: 0, c: 0 };
  const straight = fitProjective(places, level) ?? { ...level, a: 1 / pitch, b: start };
  // Exact where it was walked; then measured again with the usual windows.
  const model = withResidual(
    places.map((p) => ({ ...p, phase: p.phase - graduationAt(straight, p.t) })),
    straight,
  );
  const low = alongRow<'measuring'>(along((steps[0] as Step).place) - 2 * pitch);
  const high = alongRow<'measuring'>(along((steps[steps.length - 1] as Step).place) + 2 * pitch);
  const track = phaseTrack(signal, from, centre, model, TRACK_SIGMA).map((point) =>
    point.u < low || point.u > high ? { ...point, quality: 0 } : point,
  );
  const quality = steps.reduce((sum, step) => sum + step.quality, 0) / steps.length;
  return {
    model,
    centre,
    track,
    band,
    smoothing: 0,
    signal,
    from,
    to: alongRow(from + signal.length - 1),
    ink: 1,
    score: quality * Math.min(1, steps.length / LONG_RUN),
    followed: { from: low, to: high, pitch, count: steps.length },
  };
}

/** The pitch made exact by the phases two pitches either side; null when it runs away. */
function mendedPitch(tone: ToneMeter, place: number, rough: number): number | null {
  let pitch = rough;
  for (let pass = 0; pass < 3; pass++) {
    const sigma = MENDING_SIGMA * pitch;
    const before = tone(place - 2 * pitch, -2, 1 / pitch, sigma).phase;
    const after = tone(place + 2 * pitch, 2, 1 / pitch, sigma).phase;
    const drift = after - before - Math.round(after - before);
    if (Math.abs(drift) > AMBIGUOUS) break;
    pitch = 1 / (1 / pitch + drift / (4 * pitch));
    if (!(pitch > PITCH_TRACKING_SHORTEST_PITCH && pitch < PITCH_TRACKING_LONGEST_PITCH))
      return null;
  }
  return pitch;
}

function walk(
  tone: ToneMeter,
  first: Step,
  startFrequency: number,
  direction: 1 | -1,
  length: number,
): Step[] {
  const run = [first];
  let place = first.place;
  let frequency = startFrequency;
  let gap = 0;
  for (let step = 0; step < MOST_STEPS && gap <= LONGEST_GAP; step++) {
    place += direction / frequency;
    if (place < 1 || place > length - 2) break;
    const due = foretold(run.slice(-MEMORY), place, frequency);
    if (!due) break;
    if (due.frequency > frequency * STEADY.least && due.frequency < frequency * STEADY.most) {
      frequency = due.frequency;
    }
    const { phase, quality } = tone(place, due.k, frequency, WALK_SIGMA / frequency);
    if (quality > BELIEVED_QUALITY && Math.abs(phase) < BELIEVED_PHASE) {
      run.push({ place, k: due.k + phase, quality });
      gap = 0;
    } else gap++;
  }
  return run;
}

/** Which graduation is due at a place of the signal: a curve through the last steps, held straight by a light hand. */
function foretold(last: readonly Step[], place: number, frequency: number) {
  const end = last[last.length - 1] as Step;
  if (last.length < FEWEST_TO_CURVE)
    return { k: end.k + (place - end.place) * frequency, frequency };
  const scale = 10 / frequency;
  const rows = last.map((step) => {
    const t = (step.place - end.place) / scale;
    return [1, t, t * t, step.k - end.k, 1];
  });
  rows.push(
    [0, 0, 1, 0, last.length > LONG_MEMORY ? LIGHT_HAND : FIRM_HAND],
    [0, 1, 0, frequency * scale, 1],
  );
  const [level, slope, bend] = leastSquares(rows, 3) ?? [];
  if (level === undefined || slope === undefined || bend === undefined) return null;
  const t = (place - end.place) / scale;
  const slopeThere = slope + 2 * bend * Math.max(-FORESEEN, Math.min(FORESEEN, t));
  return { k: end.k + level + slope * t + bend * t * t, frequency: slopeThere / scale };
}
