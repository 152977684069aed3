import type { Field } from '../picture/field.ts';
import { fieldOf } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { readingAt } from '../scales/read-at.ts';
import { placeOn, pointOn, type ReadScale, type ScaleGeometry } from '../scales/scale.ts';
import type { TapeReading } from '../scales/tape-reading.ts';
import { acrossShift } from './across-shift.ts';
import { FAR, FEWEST_NUMBERS, MOST_PLACES, ON_TAPE_MM, REST } from './limits.ts';
import { type Motion, motionBetween } from './motion.ts';
import { moved, settled } from './moved-lines.ts';
import { showsItsNumbers } from './same-numbers.ts';

/** The scales of a picture, held from frame to frame. */
export interface Lock {
  /**
   * That of the last frame. A scale is sure as long as it is held; the others stay, and so do
   * the unread rows, since a place beside them belongs to none of the held ones.
   */
  readonly reading: TapeReading;
  /** The last frame, and the one the numbers were read in, with its scales in the same order. */
  readonly image: GreyImage;
  readonly key: { readonly image: GreyImage; readonly scales: readonly ReadScale[] };
  /** Where the middle of the frame that was read is now. */
  readonly readAbout: Point;
}

/** Holds every sure scale of a frame that was read; undefined when there is none. */
export function lockOn(reading: TapeReading, image: GreyImage): Lock | undefined {
  const scales = reading.scales.map((scale) =>
    scale.numbers.length < FEWEST_NUMBERS ? doubted(scale) : scale,
  );
  if (!scales.some(({ sure }) => sure)) return undefined;
  return {
    reading: { ...reading, scales },
    image,
    key: { image, scales },
    readAbout: middleOf(image),
  };
}

/**
 * Finds the scales of the last frame in a new one: the hand's motion first, then the lines by
 * their phase, then the printed numbers, so that none can slip by a line. Undefined when the tape
 * must be read anew: no scale is found again, or none under the cross and another look may help.
 */
export function follow(lock: Lock, image: GreyImage): Lock | undefined {
  const { reading, key } = lock;
  if (image.width !== lock.image.width || image.height !== lock.image.height) return undefined;
  const places = reading.scales.flatMap(placesOf);
  const every = Math.ceil(places.length / MOST_PLACES);
  const motion = motionBetween(
    lock.image,
    image,
    places.filter((_, i) => i % every === 0),
  );
  if (!motion) return undefined;
  const [field, keyField] = [fieldOf(image), fieldOf(key.image)];
  const shifts = reading.scales.map(({ geometry, sure }, i) =>
    sure
      ? acrossShift(keyField, key.scales[i] as ReadScale, field, moved(geometry, motion))
      : undefined,
  );
  // What was read nothing on has no print of its own to go by, but the camera's motion was one.
  const shared = shifts.find((shift) => shift !== undefined);
  const scales = reading.scales.map((scale, i) => {
    const put = moved(scale.geometry, shiftedBy(motion, shifts[i] ?? shared));
    return followed(scale, put, field, key.scales[i] as ReadScale, keyField);
  });
  if (!scales.some(({ sure }) => sure)) return undefined;
  const unread = reading.unread?.map((row) => moved(row, shiftedBy(motion, shared))) ?? [];
  const next = {
    ...lock,
    image,
    reading: { ...reading, scales, unread },
    readAbout: movedPoint(lock.readAbout, motion),
  };
  return wantsAnotherLook(next, motion) ? undefined : next;
}

/** Places with print on them: the numbers, and some beside the lines for want of more. */
function placesOf(scale: ReadScale): Point[] {
  const { geometry, stretches } = scale;
  const from = Math.min(...stretches.map((one) => one.from));
  const to = Math.max(...stretches.map((one) => one.to));
  const between = Array.from({ length: 9 }, (_, i) =>
    pointOn(geometry, from + ((to - from) * i) / 8, (geometry.zoneTo + geometry.numbersAcross) / 2),
  );
  return [...scale.numbers, ...between];
}

function shiftedBy(motion: Motion, shift: Point = { x: 0, y: 0 }): Motion {
  return { ...motion, right: motion.right + shift.x, down: motion.down + shift.y };
}

/** A scale in the new frame, where it was put; doubted when it isn't found there for certain. */
function followed(
  scale: ReadScale,
  put: ScaleGeometry,
  field: Field<'picture'>,
  key: ReadScale,
  keyField: Field<'picture'>,
): ReadScale {
  const geometry = settled(field, put);
  const now = { ...scale, geometry: geometry ?? put };
  const carried = ({ x, y }: Point) => {
    const { tick, across } = placeOn(scale.geometry, { x, y });
    return pointOn(now.geometry, tick, across);
  };
  const held = {
    ...now,
    numbers: scale.numbers.map((number) => ({ ...number, ...carried(number) })),
    outline: scale.outline.map(carried),
  };
  if (!scale.sure) return held;
  return geometry && showsItsNumbers(keyField, key, field, held) ? held : doubted(held);
}

function doubted(scale: ReadScale): ReadScale {
  return { ...scale, sure: false, doubts: ['line'] };
}

/**
 * Whether the cross rests on a tape that isn't read there, though it may be when it is looked at
 * again: a scale was lost since, or the camera has gone on.
 */
function wantsAnotherLook({ reading, image, key, readAbout }: Lock, motion: Motion): boolean {
  const cross = middleOf(image);
  if (readingAt(reading, cross).ok) return false;
  const away = (from: Point) =>
    Math.hypot(from.x - cross.x, from.y - cross.y) / Math.min(image.width, image.height);
  if (away(movedPoint(cross, motion)) > REST) return false;
  const onTape = reading.scales.some(({ geometry, mmPerTick }) => {
    const place = placeOn(geometry, cross);
    return (place.away / Math.abs(place.pitch)) * mmPerTick < ON_TAPE_MM;
  });
  const isLost = reading.scales.some(({ sure }, i) => !sure && key.scales[i]?.sure);
  return onTape && (isLost || away(readAbout) > FAR);
}

/** The cross stands in the middle of the frame. */
function middleOf({ width, height }: GreyImage): Point {
  return { x: (width - 1) / 2, y: (height - 1) / 2 };
}

function movedPoint({ x, y }: Point, { cosine, sine, right, down }: Motion): Point {
  return { x: cosine * x - sine * y + right, y: sine * x + cosine * y + down };
}
