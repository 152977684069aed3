import { type RowFrame, toFrame, toImage } from '../frame/frame.ts';
import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import { type Point, placeOfPoint, pointOfPlace } from '../picture/place.ts';
import { placeIn, type Scaling, type Space } from '../picture/space.ts';
import { alongAt, fromCentre, type Graduated } from '../pitch/along.ts';
import {
  densityAt,
  distanceAt,
  graduationAt,
  type PositionModel,
  type Residual,
} from '../pitch/position.ts';
import type { Crowded } from './crowded.ts';

/** Graduations of a scale between which places may be read, both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where a row of graduations lies in the picture. Plain data: it crosses from the worker. */
export interface ScaleGeometry extends Graduated<'picture'> {
  readonly frame: RowFrame<'picture'>;
  /** The graduations seen. */
  readonly from: number;
  readonly to: number;
  /** Across the row, in graduations: the band every line crosses, and the farther edge of the numbers. */
  readonly zoneFrom: number;
  readonly zoneTo: number;
  readonly numbersAcross: number;
  /** 1 when lines are darker than their ground, −1 when lighter. */
  readonly ink: 1 | -1;
  /** Scatter of single lines about the model, in graduations, and lines seen. */
  readonly scatter: number;
  /** How far a line's slant may be off, in graduations for each graduation across. */
  readonly slantDoubt: number;
  /** Where something else's strokes stand beyond the lines, on the side away from the numbers. */
  readonly crowded?: readonly Crowded[];
  /** What is uncertain besides, by place: graduations (1 sigma) at every `step` of them from `from`. */
  readonly spread?: Residual;
}

/** What the graduations of a row count. */
export interface ScaleIdentity {
  readonly unit: TapeUnit;
  /** Millimetres from one graduation to the next. */
  readonly mmPerTick: number;
  /** One graduation whose value is known, and whether values grow with the graduation's number. */
  readonly anchorTick: number;
  /** In the scale's unit. */
  readonly anchorValue: number;
  readonly direction: 1 | -1;
}

/** A printed number that was read, and where its middle stands. */
export interface ReadNumber extends Point {
  readonly value: number;
}

/** One printed scale of the picture: read, doubted, or only seen. */
export interface ReadScale extends ScaleIdentity {
  /** Without a doubt about its unit or which line is which. */
  readonly sure: boolean;
  readonly doubts: readonly ('line' | 'unit')[];
  readonly numbers: readonly ReadNumber[];
  /** Round the graduations and numbers it owns. */
  readonly outline: readonly Point[];
  readonly stretches: readonly Stretch[];
  readonly geometry: ScaleGeometry;
}

/** Where a place lies on a scale: the graduation (with its fraction), and how far beside it. */
export interface ScalePlace {
  readonly tick: number;
  /** Graduations across the row from its line of strokes, and px to a graduation here. */
  readonly across: number;
  readonly pitch: number;
  /** Px from the band that every line of the scale crosses; 0 inside it. */
  readonly away: number;
}

/** Where a place of the picture lies beside a row of graduations. */
export function placeOn(geometry: ScaleGeometry, at: Point): ScalePlace {
  const [u, v] = toFrame(geometry.frame, placeOfPoint(at));
  const t = fromCentre(geometry, u);
  const pitch = 1 / densityAt(geometry.model, t);
  const across = v / pitch;
  const outside = Math.max(geometry.zoneFrom - across, across - geometry.zoneTo, 0);
  return { tick: graduationAt(geometry.model, t), across, pitch, away: outside * Math.abs(pitch) };
}

/** The picture place of a graduation, `across` graduations beside the row. */
export function pointOn(geometry: ScaleGeometry, tick: number, across: number): Point {
  const t = distanceAt(geometry.model, tick);
  const pitch = 1 / densityAt(geometry.model, t);
  return pointOfPlace(toImage(geometry.frame, alongAt(geometry, tick), across * pitch));
}

/** The value of a graduation, in the scale's unit. */
export function valueAtTick(scale: ScaleIdentity, tick: number): number {
  const perTick = scale.mmPerTick / mmPerUnit[scale.unit];
  return scale.anchorValue + scale.direction * perTick * (tick - scale.anchorTick);
}

/** The graduation that has a value in the scale's unit. */
export function tickOfValue(scale: ScaleIdentity, value: number): number {
  const perTick = scale.mmPerTick / mmPerUnit[scale.unit];
  return scale.anchorTick + (scale.direction * (value - scale.anchorValue)) / perTick;
}

/** A model of px in one space as one of px in another. */
export function enlargedModel<From extends Space, To extends Space>(
  model: PositionModel<From>,
  factor: Scaling<From, To>,
): PositionModel<To> {
  const { a, b, c, residual } = model;
  const scaled = { a: a / factor, b, c: c / factor };
  if (!residual) return scaled;
  return {
    ...scaled,
    residual: { ...residual, from: residual.from * factor, step: residual.step * factor },
  };
}

/** A polygon round the graduations `from` to `to`, between two distances across the row. */
export function outlineOf(
  geometry: ScaleGeometry,
  from: number,
  to: number,
  low: number,
  high: number,
): Point[] {
  const steps = 12;
  const along = (across: number) =>
    Array.from({ length: steps + 1 }, (_, i) =>
      pointOn(geometry, from + ((to - from) * i) / steps, across),
    );
  return [...along(low), ...along(high).reverse()];
}

/** The same row seen in a picture that begins `left` px farther to the left and `top` px farther up. */
export function movedGeometry(
  geometry: ScaleGeometry,
  { left, top }: { left: number; top: number },
): ScaleGeometry {
  const [x, y] = geometry.frame.origin;
  return { ...geometry, frame: { ...geometry.frame, origin: placeIn(x + left, y + top) } };
}

/** A scale read in a part of a picture, in the pixels of the whole. */
export function movedScale(scale: ReadScale, by: { left: number; top: number }): ReadScale {
  const moved = <P extends Point>(at: P): P => ({ ...at, x: at.x + by.left, y: at.y + by.top });
  return {
    ...scale,
    numbers: scale.numbers.map(moved),
    outline: scale.outline.map(moved),
    geometry: movedGeometry(scale.geometry, by),
  };
}
