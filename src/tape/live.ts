import { fieldOf, logOf } from './field.ts';
import { type RowFrame, toImage } from './frame.ts';
import { contrastAt, likenessAt, type Motion, motionBetween } from './motion.ts';
import { type PhasePoint, phaseTrack } from './phase.ts';
import { densityAt, distanceAt, type PositionModel } from './position.ts';
import type { TapeReading } from './read-at.ts';
import type { Field, GreyImage, Point } from './reading.ts';
import { enlargedModel, placeOn, pointOn, type ReadScale, type ScaleGeometry } from './scale.ts';
import { bentTo } from './scale-of.ts';
import { bandSignal, strip } from './strip.ts';

/** A scale held from frame to frame. Its reading is that of the last frame. */
export interface Lock {
  readonly reading: TapeReading;
  /** The last frame, and the one the numbers were read in. */
  readonly image: GreyImage;
  readonly key: { readonly image: GreyImage; readonly scale: ReadScale };
}

/** Holds the first sure scale of a frame that was read; undefined when there is none. */
export function lockOn(reading: TapeReading, image: GreyImage): Lock | undefined {
  const scale = reading.scales.find(
    ({ sure, numbers }) => sure && numbers.length >= FEWEST_NUMBERS,
  );
  if (!scale) return undefined;
  return { reading: { ...reading, scales: [scale] }, image, key: { image, scale } };
}

/** Numbers that must be seen again, and how much alike, for the lines to be the same lines. */
const FEWEST_NUMBERS = 2;
const SAME_NUMBER = 0.55;
/** Followed lines beat this steadily. */
const LEAST_QUALITY = 0.45;
/** Half a graduation off, the next line would be taken for this one. */
const MOST_SHIFT = 0.3;
/** Another size or turn than when the numbers were read: they are read again. */
const MOST_SIZE = 1.35;

/**
 * Finds the scale of the last frame in a new one: the hand's motion first, then the lines by
 * their phase, then the printed numbers, so that it can't slip by a line. Undefined when any
 * of the three fails: the tape must be read anew.
 */
export function follow(lock: Lock, image: GreyImage): Lock | undefined {
  const [scale] = lock.reading.scales;
  if (!scale || image.width !== lock.image.width || image.height !== lock.image.height) {
    return undefined;
  }
  const motion = motionBetween(lock.image, image, placesOf(scale));
  if (!motion) return undefined;
  const field = fieldOf(image);
  const geometry = settled(field, moved(scale.geometry, motion));
  if (!geometry) return undefined;
  const held = { ...scale, geometry };
  if (!showsItsNumbers(lock.key, held, field)) return undefined;
  const numbers = held.numbers.map((number) => ({ ...number, ...carried(scale, held, number) }));
  const outline = held.outline.map((point) => carried(scale, held, point));
  const now = { ...held, numbers, outline };
  return { ...lock, image, reading: { ...lock.reading, scales: [now], unread: [] } };
}

/** Places with print on them: the numbers, and the outline's corners for want of more. */
function placesOf(scale: ReadScale): Point[] {
  const { geometry, stretches } = scale;
  const from = Math.min(...stretches.map((one) => one.from));
  const to = Math.max(...stretches.map((one) => one.to));
  const between = Array.from({ length: 9 }, (_, i) =>
    pointOn(geometry, from + ((to - from) * i) / 8, (geometry.zoneTo + geometry.numbersAcross) / 2),
  );
  return [...scale.numbers, ...between];
}

function moved(geometry: ScaleGeometry, { cosine, sine, right, down }: Motion): ScaleGeometry {
  const size = Math.hypot(cosine, sine);
  const turned = ([x, y]: readonly [number, number]) =>
    [(cosine * x - sine * y) / size, (sine * x + cosine * y) / size] as const;
  const { frame } = geometry;
  const [x, y] = frame.origin;
  const next: RowFrame = {
    origin: [cosine * x - sine * y + right, sine * x + cosine * y + down],
    along: turned(frame.along),
    across: turned(frame.across),
    shear: frame.shear,
    shearRate: frame.shearRate / size,
    bow2: frame.bow2 / size,
    bow3: frame.bow3 / (size * size),
    bowFrom: frame.bowFrom * size,
  };
  const model = enlargedModel(geometry.model, size);
  return { ...geometry, frame: next, model, centre: geometry.centre * size };
}

/** The lines' own phase puts right what the motion left; undefined when they aren't there. */
function settled(field: Field, geometry: ScaleGeometry): ScaleGeometry | undefined {
  const { frame, centre, zoneFrom, zoneTo, ink } = geometry;
  let model: PositionModel = geometry.model;
  const middle = distanceAt(model, (geometry.from + geometry.to) / 2);
  const pitch = 1 / Math.abs(densityAt(model, middle));
  const low = Math.floor(zoneFrom * pitch);
  const high = Math.max(low + 2, Math.ceil(zoneTo * pitch));
  const along = strip(logOf(field), frame, Math.max(Math.abs(low), Math.abs(high)) + 1);
  if (along.width < 8 * pitch) return undefined;
  const signal = bandSignal(along, low, high).map((value) => value * ink);
  for (let pass = 0; pass < 2; pass++) {
    const track = phaseTrack(signal, along.from, centre, model, 2.5).filter(({ t }) =>
      isSeen(geometry, model, t),
    );
    const good = track.filter(({ quality }) => quality > LEAST_QUALITY);
    if (good.length < 8 || good.length < 0.5 * track.length) return undefined;
    if (pass === 0 && typicalShift(good) > MOST_SHIFT) return undefined;
    model = bentTo(model, good);
  }
  return { ...geometry, model };
}

function isSeen(geometry: ScaleGeometry, model: PositionModel, t: number): boolean {
  const low = distanceAt(model, geometry.from);
  const high = distanceAt(model, geometry.to);
  return t > Math.min(low, high) && t < Math.max(low, high);
}

function typicalShift(track: readonly PhasePoint[]): number {
  const sizes = track.map(({ phase }) => Math.abs(phase)).sort((a, b) => a - b);
  return sizes[sizes.length >> 1] ?? 1;
}

/** Where a point beside the scale is after the scale has moved. */
function carried(before: ReadScale, after: ReadScale, { x, y }: Point): Point {
  const { tick, across } = placeOn(before.geometry, x, y);
  return pointOn(after.geometry, tick, across);
}

/** A number's patch, as a share of the way to the next number along the tape, and in graduations across. */
const PATCH_SHARE = 0.3;
const PATCH_STEPS = 6;

/** Whether the numbers seen when the scale was read are where they must be now, and not one number off. */
function showsItsNumbers(key: Lock['key'], held: ReadScale, field: Field): boolean {
  const keyField = fieldOf(key.image);
  const ticks = key.scale.numbers.map((number) => placeOn(key.scale.geometry, number.x, number.y));
  const step = leastStep(ticks.map(({ tick }) => tick));
  const grown = sizeOf(held.geometry, held) / sizeOf(key.scale.geometry, key.scale);
  if (!(grown < MOST_SIZE && grown > 1 / MOST_SIZE)) return false;
  let [seen, right] = [0, 0];
  for (const { tick, across } of ticks) {
    const here = patch(held.geometry, tick, across, step);
    if (!here.every((point) => inside(field, point))) continue;
    const there = patch(key.scale.geometry, tick, across, step);
    seen++;
    if (isSameNumber(keyField, there, field, here)) right++;
  }
  return seen >= FEWEST_NUMBERS && right >= Math.max(FEWEST_NUMBERS, 0.6 * seen);
}

function sizeOf({ frame, model, centre }: ScaleGeometry, { numbers }: ReadScale): number {
  const [x, y] = toImage(frame, centre, 0);
  const [nextX, nextY] = toImage(frame, centre + 1 / densityAt(model, 0), 0);
  return numbers.length === 0 ? 1 : Math.hypot(nextX - x, nextY - y);
}

function leastStep(ticks: readonly number[]): number {
  const sorted = [...ticks].sort((one, other) => one - other);
  const steps = sorted.slice(1).map((tick, i) => tick - (sorted[i] as number));
  return Math.min(...steps.filter((step) => step > 0.5), 10);
}

/** Columns of a patch that hold about one digit, and how much each must be alike. */
const DIGIT_STEPS = 5;
const SAME_DIGIT = 0.7;

/**
 * Whether two patches show the same number: as wholes, and digit by digit along the tape and
 * across it, since one digit of three weighs too little in the whole.
 */
function isSameNumber(
  keyField: Field,
  there: readonly Point[],
  field: Field,
  here: readonly Point[],
): boolean {
  if (likenessAt(keyField, there, field, here) <= SAME_NUMBER) return false;
  return DIGIT_PLACES.every((places) => {
    const pick = (points: readonly Point[]) => places.map((place) => points[place] as Point);
    const shown = contrastAt(keyField, pick(there));
    // Bare tape beside a short number tells nothing.
    if (shown < BARE_SHARE * contrastAt(keyField, there)) return true;
    return likenessAt(keyField, pick(there), field, pick(here)) > SAME_DIGIT;
  });
}

const BARE_SHARE = 0.5;
const SIDE = 2 * PATCH_STEPS + 1;

/** Indices of a patch's points in windows one digit wide, across the tape and along it. */
const DIGIT_PLACES: readonly (readonly number[])[] = [0, 2, 4, 6, 8].flatMap((first) => {
  const inside = (step: number) => step >= first && step < first + DIGIT_STEPS;
  const all = Array.from({ length: SIDE * SIDE }, (_, index) => index);
  return [
    all.filter((index) => inside(index % SIDE)),
    all.filter((index) => inside(Math.floor(index / SIDE))),
  ];
});

function patch(geometry: ScaleGeometry, tick: number, across: number, step: number): Point[] {
  const half = PATCH_SHARE * step;
  const points: Point[] = [];
  for (let j = -PATCH_STEPS; j <= PATCH_STEPS; j++) {
    for (let i = -PATCH_STEPS; i <= PATCH_STEPS; i++) {
      points.push(
        pointOn(geometry, tick + (half * i) / PATCH_STEPS, across + (half * j) / PATCH_STEPS),
      );
    }
  }
  return points;
}

function inside({ width, height }: Field, { x, y }: Point): boolean {
  return x >= 1 && y >= 1 && x < width - 2 && y < height - 2;
}
