import type { TapeUnit } from '../graduations/tape-unit.ts';
import type { Point } from '../picture/place.ts';
import type { ReadScale, ScaleGeometry } from './scale.ts';

/** Why a picture gives no reading. */
export type CannotReason =
  | 'no-tape'
  | 'no-graduations'
  | 'no-numbers'
  | 'few-numbers'
  | 'numbers-disagree'
  | 'unit-unknown'
  | 'too-small'
  | 'too-blurred'
  | 'too-dark';

/** Why one place gives no reading though the picture does. */
export type PointReason =
  | 'off-the-scale'
  | 'beyond-the-numbers'
  | 'below-zero'
  | 'another-scale'
  | 'not-sure-yet'
  | 'lines-unclear'
  | 'nothing-read';

/** What the maker is asked before a scale counts as read. */
export type TapeQuestion =
  /** Is the line at this place the one with this value? */
  | (Point & {
      readonly kind: 'line';
      readonly scale: number;
      readonly value: number;
      readonly unit: TapeUnit;
    })
  /** What does the number at this place count? */
  | (Point & {
      readonly kind: 'unit';
      readonly scale: number;
      readonly value: number;
      readonly choices: readonly TapeUnit[];
    });

export type TapeOutcome = 'read' | 'ask' | 'cannot';

/** What a picture gave. Plain data: it crosses from the worker to the page. */
export interface TapeReading {
  readonly width: number;
  readonly height: number;
  readonly outcome: TapeOutcome;
  readonly reason?: CannotReason;
  readonly question?: TapeQuestion;
  /** The surest first. */
  readonly scales: readonly ReadScale[];
  /** Rows of graduations that were seen and not read: a place on one belongs to no scale. */
  readonly unread?: readonly ScaleGeometry[];
  /** How far from square the tape was seen, in degrees, when it could be measured. */
  readonly tiltDegrees?: number;
}

export type PointReading =
  | {
      readonly ok: true;
      /** Index of the scale that owns the place. */
      readonly scale: number;
      readonly value: number;
      readonly unit: TapeUnit;
      readonly mm: number;
      /** Half width of the 95 % interval, the tape's own tolerance not included. */
      readonly uncertaintyMm: number;
    }
  /** `scale`: the one whose question must be answered first. */
  | { readonly ok: false; readonly reason: PointReason; readonly scale?: number };
