import * as frames from '../../../src/tape/frame/frame.ts';
import { alongRow, placeIn, type Space } from '../../../src/tape/picture/space.ts';

/*
 * A test makes rows in whatever pixels it is about, so that its places fit any space: what the
 * reader's own code may not do.
 */

export function rowFrame([x, y]: readonly [number, number], angle: number): frames.RowFrame<never> {
  return frames.rowFrame(placeIn<never>(x, y), angle);
}

export function toImage<S extends Space>(frame: frames.RowFrame<S>, u: number, v: number) {
  return frames.toImage(frame, alongRow<S>(u), v);
}

export function toFrame<S extends Space>(
  frame: frames.RowFrame<S>,
  ...[x, y]: readonly [x: number, y: number]
) {
  return frames.toFrame(frame, placeIn<S>(x, y));
}
