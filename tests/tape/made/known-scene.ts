import { scaledFrame, toFrame } from '../../../src/tape/frame/frame.ts';
import type { FollowedRow } from '../../../src/tape/graduations/followed-row.ts';
import { trustedRange } from '../../../src/tape/graduations/sheet.ts';
import { tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import type { Field } from '../../../src/tape/picture/field.ts';
import { fieldOf, takenAs } from '../../../src/tape/picture/field.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import type { Point } from '../../../src/tape/picture/place.ts';
import { placeIn, scalingOf } from '../../../src/tape/picture/space.ts';
import { tickAlong } from '../../../src/tape/pitch/along.ts';
import { pitchBySpectra } from '../../../src/tape/pitch/pitch-spectrum.ts';
import { refine } from '../../../src/tape/pitch/refine.ts';
import { fitRow } from '../../../src/tape/rows/row-fit.ts';
import { scaleOf } from '../../../src/tape/scales/scale-of.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { render } from '../../tapes/render.ts';
import { planned, type SceneKind } from '../../tapes/scene.ts';
import { tapeBody } from '../../tapes/tape-body.ts';
import { madeClaim, placed } from './made-rows.ts';
import { rowFrame } from './plain-places.ts';

/** A scene with one scale of centimetres, and where its places are, as the reader counts pixels. */
export interface KnownScene {
  readonly image: GreyImage;
  readonly fromMm: number;
  readonly toMm: number;
  lineAt(mm: number): Point;
  numberAt(mm: number): Point;
}

/** Scenes have the middle of their first pixel at a half, the reader at 0. */
const counted = ({ x, y }: Point): Point => ({ x: x - 0.5, y: y - 0.5 });

/** The middle of a print in the copy that is measured: of such a scene, the picture itself. */
const placeAt = ({ x, y }: Point) => placeIn<'measuring'>(x, y);

/** The scene; with its print moved along the tape by so many mm when wished, all else the same. */
export function knownScene(kind: SceneKind, seed: number, movedMm = 0): KnownScene {
  const { spec, camera, random, truth } = planned(kind, seed);
  const tapes = spec.tapes.map((tape) => ({
    ...tape,
    scales: tape.scales.map((scale) => ({ ...scale, zero: scale.zero + movedMm })),
  }));
  const bodies = tapes.map((tape) => tapeBody(tape, camera));
  const { width, height } = spec.camera;
  const [seen, body, scale] = [truth.scales[0], bodies[0], tapes[0]?.scales[0]];
  if (!seen || !body || !scale?.numbers) throw new Error(`no scale in ${kind} ${seed}`);
  const { numbers, edge, zero, direction } = scale;
  const across = edge === 'low' ? numbers.across : body.spec.width - numbers.across;
  return {
    image: { width, height, pixels: render({ ...spec, tapes }, camera, bodies, random) },
    fromMm: seen.visibleFromMm,
    toMm: seen.visibleToMm,
    lineAt: (mm) => counted(seen.pointAt(mm + direction * movedMm)),
    numberAt: (mm) => counted(body.see(zero + direction * mm, across)),
  };
}

/**
 * What the reader makes of such a scene when it reads every number right; of one between 1100 and
 * 1900 px long, which it measures as it is.
 */
export function readAsKnown(scene: KnownScene): TapeReading {
  const { image, fromMm, toMm, lineAt, numberAt } = scene;
  const field = fieldOf(image);
  const row = followedRow(scene, takenAs(field));
  const { frame, pitch, pattern } = row;
  const tickAt = (mm: number) => {
    return tickAlong(pitch, toFrame(frame, placeAt(lineAt(mm)))[0]);
  };
  const first = 10 * Math.ceil(fromMm / 10);
  const count = Math.floor((toMm - first) / 10);
  const agreeing = Array.from({ length: count }, (_, i) => {
    const mm = first + 10 * i;
    return { ...placed(Math.round(tickAt(mm)), mm / 10), at: placeAt(numberAt(mm)) };
  });
  const middle = agreeing[count >> 1];
  if (!middle) throw new Error('no numbers in sight');
  const claim = madeClaim([first / 10], {
    agreeing,
    anchorTick: Math.round(tickAt(first)),
    direction: tickAt(first + 10) > tickAt(first) ? 1 : -1,
    across: toFrame(frame, middle.at)[1] * pitch.model.a,
    pattern,
  });
  const scale = scaleOf(takenAs(field), row, claim, new Set(), scalingOf(1));
  if (!scale) throw new Error('nothing may be read');
  return { width: image.width, height: image.height, outcome: 'read', scales: [scale] };
}

function followedRow({ fromMm, toMm, lineAt }: KnownScene, field: Field<never>): FollowedRow {
  const [near, middle, far] = [0.1, 0.5, 0.9].map((share) =>
    lineAt(fromMm + share * (toMm - fromMm)),
  ) as [Point, Point, Point];
  const start = rowFrame([middle.x, middle.y], Math.atan2(far.y - near.y, far.x - near.x));
  // A scene of this size is sought and measured in one copy.
  const sought = fitRow(field, start);
  const frame = sought && scaledFrame<'search', 'measuring'>(sought, scalingOf(1));
  const rough = frame && pitchBySpectra(field, frame);
  const found = rough && refine(field, frame, rough);
  const range = found && trustedRange(found.pitch);
  const pattern = range && tickPattern(field, found.frame, found.pitch, range);
  if (!pattern) throw new Error('no row of lines where the scene has one');
  return { ...found, range, pattern };
}
