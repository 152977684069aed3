import { rowFrame, scaledFrame, toFrame } from '../../src/tape/frame.ts';
import { pitchBySpectra } from '../../src/tape/pitch-spectrum.ts';
import { polish } from '../../src/tape/polish.ts';
import { graduationAt } from '../../src/tape/position.ts';
import type { TapeReading } from '../../src/tape/read-at.ts';
import type { FollowedRow } from '../../src/tape/read-row.ts';
import { copiesOf } from '../../src/tape/read-tape.ts';
import type { GreyImage, Point } from '../../src/tape/reading.ts';
import { fitRow } from '../../src/tape/row-fit.ts';
import { scaleOf } from '../../src/tape/scale-of.ts';
import { trustedRange } from '../../src/tape/sheet.ts';
import { tickPattern } from '../../src/tape/tick-pattern.ts';
import { render } from '../tapes/render.ts';
import { planned, type SceneKind } from '../tapes/scene.ts';
import { tapeBody } from '../tapes/tape-body.ts';
import { madeClaim, placed } from './made-rows.ts';

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

/** What the reader makes of such a scene when it reads every number right. */
export function readAsKnown(scene: KnownScene): TapeReading {
  const { image } = scene;
  const copies = copiesOf(image);
  const toWork = 1 / copies.workToPicture;
  const inWork = ({ x, y }: Point): Point => ({
    x: (x + 0.5) * toWork - 0.5,
    y: (y + 0.5) * toWork - 0.5,
  });
  const row = followedRow(scene, copies, inWork);
  const tickAt = (mm: number) => {
    const { x, y } = inWork(scene.lineAt(mm));
    return graduationAt(row.pitch.model, toFrame(row.frame, x, y)[0] - row.pitch.centre);
  };
  const first = 10 * Math.ceil(scene.fromMm / 10);
  const count = Math.floor((scene.toMm - first) / 10);
  const direction = tickAt(first + 10) > tickAt(first) ? 1 : -1;
  const agreeing = Array.from({ length: count }, (_, i) => {
    const mm = first + 10 * i;
    return { ...placed(Math.round(tickAt(mm)), mm / 10), ...inWork(scene.numberAt(mm)) };
  });
  const middle = agreeing[count >> 1];
  if (!middle) throw new Error('no numbers in sight');
  const across = toFrame(row.frame, middle.x, middle.y)[1] * row.pitch.model.a;
  const claim = madeClaim([first / 10], {
    agreeing,
    anchorTick: Math.round(tickAt(first)),
    direction,
    across,
    pattern: row.pattern,
  });
  const scale = scaleOf(copies.work, row, claim, new Set(), copies.workToPicture);
  if (!scale) throw new Error('nothing may be read');
  return { width: image.width, height: image.height, outcome: 'read', scales: [scale] };
}

function followedRow(
  scene: KnownScene,
  { small, work, smallToWork }: ReturnType<typeof copiesOf>,
  inWork: (place: Point) => Point,
): FollowedRow {
  const [from, middle, to] = [0.1, 0.5, 0.9].map((share) => {
    const { x, y } = inWork(scene.lineAt(scene.fromMm + share * (scene.toMm - scene.fromMm)));
    return { x: (x + 0.5) / smallToWork - 0.5, y: (y + 0.5) / smallToWork - 0.5 };
  }) as [Point, Point, Point];
  const start = rowFrame([middle.x, middle.y], Math.atan2(to.y - from.y, to.x - from.x));
  const fitted = fitRow(small, start);
  const frame = fitted && scaledFrame(fitted, smallToWork);
  const rough = frame && pitchBySpectra(work, frame);
  const found = rough && polish(work, frame, rough);
  const range = found && trustedRange(found.pitch);
  const pattern = range && tickPattern(work, found.frame, found.pitch, range);
  if (!pattern) throw new Error('no row of lines where the scene has one');
  return { ...found, range, pattern };
}
