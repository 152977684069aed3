import type { RowFrame } from '../frame/frame.ts';
import { bandSignal, type Strip, smoothed, strip } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import {
  CLEARLY_SHARPER,
  FIT_SIGMA,
  HARDLY_DULLER,
  PHASE_REACH,
  ROUNDS,
  ROUNDS_FOLLOWED,
  TRACK_SIGMA,
} from './limits.ts';
import { type PhasePoint, phaseTrack } from './phase.ts';
import { shearFromPhase } from './phase-shear.ts';
import type { RowPitch } from './pitch-spectrum.ts';
import { fitProjective, type PositionModel } from './position.ts';
import { withResidual } from './residual.ts';
import { sharpness, sharpnessReach } from './sharpness.ts';
import { leaned, shearFromStrokes, strokeReach } from './shear.ts';

/** A frame, the strip of the log picture along it, and how sharp the lines stand in that. */
interface Trial {
  readonly frame: RowFrame<'measuring'>;
  readonly along: Strip<'measuring'>;
  readonly sharp: number;
}

export interface Refined {
  readonly frame: RowFrame<'measuring'>;
  readonly pitch: RowPitch;
}

/**
 * The frame's shear from the strokes and then from the phase of the graduations across the row,
 * with the pitch fitted anew on each better frame. Neither input is changed.
 */
export function refine(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
): Refined {
  const log = logOf(work);
  const start = bestStart(log, frame, pitch);
  let best: Refined & { along: Strip<'measuring'> } = { ...start, pitch };
  if (start.frame !== frame) best = { ...best, pitch: refitted(start.along, pitch) ?? pitch };
  for (let round = 0; round < (pitch.followed ? ROUNDS_FOLLOWED : ROUNDS); round++) {
    const lean = shearFromPhase(best.along, best.pitch);
    if (!lean) break;
    const next = trialOf(log, leaned(best.frame, lean), best.pitch, sharpnessReach(best.pitch));
    // The phase can be led astray too; the shear from the strokes then stands.
    if (next.sharp < HARDLY_DULLER * sharpness(best.along, best.pitch)) break;
    const fit = refitted(next.along, best.pitch);
    best = { ...next, pitch: fit ?? best.pitch };
    if (!fit) break;
  }
  return { frame: best.frame, pitch: best.pitch };
}

/** The model for the other polarity: lines light on dark stand half a graduation on. */
export function halfOn(pitch: RowPitch): RowPitch {
  const { model, ink } = pitch;
  const moved = { ...model, a: model.a + 0.5 * model.c, b: model.b + 0.5 };
  return { ...pitch, model: moved, ink: ink === 1 ? -1 : 1 };
}

/** Of the shear given, that mended by its strokes, and none mended likewise (cloth can mislead the
 * first): the one with the sharpest lines. */
function bestStart(log: Field<'measuring'>, frame: RowFrame<'measuring'>, pitch: RowPitch): Trial {
  const given = trialOf(log, frame, pitch, strokeReach(pitch));
  const mend = shearFromStrokes(given.along, pitch);
  const mended = mend && trialOf(log, leaned(frame, mend), pitch, sharpnessReach(pitch));
  const upright = mendedUpright(log, frame, pitch);
  const most = Math.max(given.sharp, mended?.sharp ?? 0, upright.sharp);
  if (most <= CLEARLY_SHARPER * given.sharp) return given;
  return mended && mended.sharp === most ? mended : upright;
}

function mendedUpright(
  log: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
): Trial {
  const square = { ...frame, shear: 0, shearRate: 0 };
  const along = strip(log, square, strokeReach(pitch));
  const mend = shearFromStrokes(along, pitch);
  if (mend) return trialOf(log, leaned(square, mend), pitch, sharpnessReach(pitch));
  return { frame: square, along, sharp: sharpness(along, pitch) };
}

/** One strip serves sharpness, phases and the fit: its rows are the same whatever its reach. */
function trialOf(
  log: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  reach: number,
): Trial {
  const along = strip(log, frame, Math.max(reach, sharpnessReach(pitch), PHASE_REACH));
  return { frame, along, sharp: sharpness(along, pitch) };
}

/** The pitch again on a strip along a better frame; null when no model fits any more. */
function refitted(along: Strip<'measuring'>, pitch: RowPitch): RowPitch | null {
  const [low, high] = pitch.band;
  const plain = bandSignal(along, low, high);
  const signal = pitch.smoothing ? smoothed(plain, pitch.smoothing) : plain;
  const fitTrack = (model: PositionModel<'measuring'>, sigma: number) =>
    counted(pitch, phaseTrack(signal, along.from, pitch.centre, model, sigma));
  let model: PositionModel<'measuring'> | null = pitch.model;
  // A followed row with a residual keeps its model: a projective fit would undo the walk.
  if (!pitch.followed || !model.residual) {
    for (let pass = 0; pass < 2; pass++) {
      model = fitProjective(fitTrack(model, FIT_SIGMA), model);
      if (!model) return null;
    }
  }
  let track = fitTrack(model, TRACK_SIGMA);
  // Round a bend the residual is as fine as it was walked: smoothing it anew would straighten it.
  for (let pass = 0; pass < 2 && pitch.followed?.leanOff === undefined; pass++) {
    const bent: PositionModel<'measuring'> = withResidual(track, model);
    if (bent === model) break;
    model = bent;
    track = fitTrack(model, TRACK_SIGMA);
  }
  return { ...pitch, model, track, signal, from: along.from, to: along.to };
}

/** A followed row counts only where it was followed. */
function counted(
  { followed }: RowPitch,
  track: PhasePoint<'measuring'>[],
): PhasePoint<'measuring'>[] {
  if (!followed) return track;
  const { from, to } = followed;
  return track.map((point) => (point.u < from || point.u > to ? { ...point, quality: 0 } : point));
}
