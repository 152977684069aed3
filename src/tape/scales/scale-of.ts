import type { Claim, Doubt } from '../claims/claim.ts';
import { scaledFrame } from '../frame/frame.ts';
import { linesSeen } from '../graduations/detected-lines.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import type { Field } from '../picture/field.ts';
import { pointOfPlace } from '../picture/place.ts';
import { centred, type Scaling, type Space, scaledAlong, scaledPlace } from '../picture/space.ts';
import type { PhasePoint } from '../pitch/phase.ts';
import { distanceAt, graduationAt, type PositionModel, residualAt } from '../pitch/position.ts';
import { begunAnew } from './begun-anew.ts';
import { crowdedBeside } from './crowded.ts';
import {
  FEWEST_PLACES,
  FOLLOWED_QUALITY,
  HALF_DIGITS,
  LEAST_SCATTER,
  LONGEST_TABLE,
  MOST_JUMP,
  PER_LINE,
  SCATTER_SHARE,
  SLANT_DOUBT,
  UNSEEN_SCATTER,
} from './limits.ts';
import { numbersApart, readableStretches, withoutSlips } from './readable-stretches.ts';
import {
  enlargedModel,
  outlineOf,
  type ReadNumber,
  type ReadScale,
  type ScaleGeometry,
} from './scale.ts';

/**
 * The public form of a claimed row, in the pixels of the whole picture; undefined when no
 * stretch of it may be read.
 */
export function scaleOf(
  work: Field<'measuring'>,
  row: FollowedRow,
  claim: Claim,
  claimDoubts: ReadonlySet<Doubt>,
  toPicture: Scaling<'measuring', 'picture'>,
): ReadScale | undefined {
  const seen = linesSeen(work, row);
  const { model } = row.pitch;
  const stretches = withoutSlips(
    readableStretches(claim, seen),
    (tick) => residualAt(model, distanceAt(model, tick)),
    (one, next) => numbersApart(claim, one, next),
  );
  if (stretches.length === 0) return undefined;
  const doubts = new Set(claimDoubts);
  if (begunAnew(claim, seen)) doubts.add('line');
  const crowded = crowdedBeside(work, row, claim);
  const geometry = { ...geometryOf(row, claim.across, toPicture), crowded };
  const from = Math.min(...stretches.map((stretch) => stretch.from));
  const to = Math.max(...stretches.map((stretch) => stretch.to));
  const { zoneFrom, zoneTo } = geometry;
  const half = claim.digitShare * claim.ticksPerNumber * HALF_DIGITS;
  return {
    unit: claim.unit,
    mmPerTick: claim.mmPerTick,
    anchorTick: claim.anchorTick,
    anchorValue: claim.anchorValue,
    direction: claim.direction,
    sure: doubts.size === 0,
    doubts: [...doubts],
    numbers: claim.agreeing.map(
      ({ value, at }): ReadNumber => ({
        value,
        ...pointOfPlace(scaledPlace(at, toPicture)),
      }),
    ),
    outline: outlineOf(
      geometry,
      from,
      to,
      Math.min(zoneFrom, claim.across - half),
      Math.max(zoneTo, claim.across + half),
    ),
    stretches,
    geometry,
  };
}

/** Where a followed row lies, in the pixels of the whole picture. */
export function geometryOf(
  row: FollowedRow,
  numbersAcross: number,
  factor: Scaling<'measuring', 'picture'>,
): ScaleGeometry {
  const { frame, pitch, range, pattern } = row;
  return {
    frame: scaledFrame(frame, factor),
    model: enlargedModel(bentTo(pitch.model, pitch.track.filter(good)), factor),
    centre: scaledAlong(pitch.centre, factor),
    from: range[0],
    to: range[1],
    zoneFrom: pattern.zoneFrom,
    zoneTo: pattern.zoneTo,
    numbersAcross,
    ink: pitch.ink,
    scatter: scatterOf(pitch.track),
    slantDoubt: Math.hypot(SLANT_DOUBT, pitch.followed?.leanOff ?? 0),
  };
}

function good({ quality, phase }: PhasePoint): boolean {
  return quality > FOLLOWED_QUALITY && Math.abs(phase) < MOST_JUMP;
}

/** Half the width that holds nine in ten of the followed places. */
function scatterOf(track: readonly PhasePoint[]): number {
  const sizes = track
    .filter(good)
    .map(({ phase }) => Math.abs(phase))
    .sort((a, b) => a - b);
  return (
    LEAST_SCATTER + PER_LINE * (sizes[Math.floor(sizes.length * SCATTER_SHARE)] ?? UNSEEN_SCATTER)
  );
}

/** The model with what its lines were last seen to differ by laid on top: it follows gentle bends. */
export function bentTo<S extends Space>(
  model: PositionModel<S>,
  places: readonly PhasePoint<S>[],
): PositionModel<S> {
  const first = places[0];
  const last = places[places.length - 1];
  if (!first || !last || places.length < FEWEST_PLACES) return model;
  const count = Math.min(LONGEST_TABLE, places.length * 2);
  const step = (last.t - first.t) / (count - 1);
  const values = new Float32Array(count);
  let at = 0;
  for (let i = 0; i < count; i++) {
    const t = first.t + i * step;
    while (at + 1 < places.length - 1 && (places[at + 1] as PhasePoint<S>).t < t) at++;
    const left = places[at] as PhasePoint<S>;
    const right = (places[at + 1] ?? left) as PhasePoint<S>;
    const share =
      right.t > left.t ? Math.max(0, Math.min(1, (t - left.t) / (right.t - left.t))) : 0;
    values[i] = residualAt(model, centred(t)) + left.phase * (1 - share) + right.phase * share;
  }
  const bent = { ...model, residual: { from: first.t, step, values } };
  return Number.isFinite(graduationAt(bent, first.t)) ? bent : model;
}
