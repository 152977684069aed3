import type { Claim, PlacedNumber } from '../../../src/tape/claims/claim.ts';
import type { ClaimedRow } from '../../../src/tape/claims/reconcile.ts';
import type { FollowedRow } from '../../../src/tape/graduations/followed-row.ts';
import { mmPerUnit } from '../../../src/tape/graduations/tape-unit.ts';
import type { TickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import type { Component } from '../../../src/tape/numbers/components.ts';
import { cellOf, type NumberRead } from '../../../src/tape/numbers/number-row.ts';
import { alongRow, placeIn } from '../../../src/tape/picture/space.ts';
import { distanceAt } from '../../../src/tape/pitch/position.ts';
import type { ReadScale, ScaleGeometry } from '../../../src/tape/scales/scale.ts';
import { truthOf } from './drawn-tape.ts';
import { rowFrame, toImage } from './plain-places.ts';

/** A straight row with a graduation every 10 px, seen from graduation −30 to 50. */
export function madeGeometry(change: Partial<ScaleGeometry> = {}): ScaleGeometry {
  return {
    frame: rowFrame([400, 300], 0),
    model: { a: 0.1, b: 0, c: 0 },
    centre: alongRow(0),
    from: -30,
    to: 50,
    zoneFrom: 0,
    zoneTo: 2,
    numbersAcross: 5,
    ink: 1,
    scatter: 0.02,
    slantDoubt: 0.004,
    ...change,
  };
}

/** Centimetres in millimetres with 20 cm at graduation 0, read all along. */
export function madeScale(change: Partial<ReadScale> = {}): ReadScale {
  const geometry = change.geometry ?? madeGeometry();
  return {
    unit: 'cm',
    mmPerTick: 1,
    anchorTick: 0,
    anchorValue: 20,
    direction: 1,
    sure: true,
    doubts: [],
    numbers: [
      { value: 19, x: 300, y: 350 },
      { value: 20, x: 400, y: 350 },
      { value: 21, x: 500, y: 350 },
    ],
    outline: [],
    stretches: [{ from: geometry.from, to: geometry.to }],
    geometry,
    ...change,
  };
}

export function madePattern(subdivisions: number, valid = true): TickPattern {
  const line = { subdivisions, longAt: 0, lengths: Array(subdivisions).fill(0), margin: 10 };
  return {
    ...line,
    side: 1,
    strength: 1,
    symmetric: true,
    valid,
    contrast: 1,
    zoneMiddle: 1,
    zoneFrom: 0,
    zoneTo: 2,
    duty: 0.2,
    presence: 1,
    classes: () => line,
  };
}

/** Sheet pixels to a graduation, and the size of a digit there. */
const PER_TICK = 20;
const DIGIT = { height: 70, width: 42, gap: 8 };

/** A patch of ink on the sheet, its upper edge in line with that of the digits. */
export function patch(x0: number, width: number, height: number, y0 = 0): Component {
  const [x1, y1] = [x0 + width - 1, y0 + height - 1];
  const [middleX, middleY] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return { id: x0, x0, x1, y0, y1, width, height, middleX, middleY, area: width * height };
}

/** A patch for each digit, each as wide as the next. */
export function digits(text: string, x0 = 0): Component[] {
  const step = DIGIT.width + DIGIT.gap;
  return [...text].map((_, i) => patch(x0 + i * step, DIGIT.width, DIGIT.height));
}

/** What is read from given patches whose left edge is `left` graduations along the row. */
export function readFrom(parts: readonly Component[], left: number, text: string): NumberRead {
  const fromTick = left - Math.min(...parts.map(({ x0 }) => x0)) / PER_TICK;
  const cell = cellOf(parts, { fromTick, perTick: PER_TICK });
  return { cell, value: Number(text), text, confidence: 90 };
}

/** A number read with its middle beside a graduation of a row of 10 px pitch. */
export function placed(tick: number, value: number, text = String(value)): PlacedNumber {
  const parts = digits(text);
  const width = (parts.at(-1)?.x1 ?? 0) / PER_TICK;
  const read = readFrom(parts, tick - width / 2, text);
  return { value, tick, read, at: placeIn(400 + 10 * tick, 350) };
}

/** A row's claim in centimetres: `first` at graduation 0, one number more every ten graduations. */
export function madeClaim(values: readonly number[], change: Partial<Claim> = {}): Claim {
  const first = values[0] ?? 0;
  const ticksPerNumber = change.ticksPerNumber ?? 10;
  return {
    unit: 'cm',
    mmPerTick: 1,
    step: 1,
    ticksPerNumber,
    anchorTick: 0,
    anchorValue: first,
    direction: 1,
    placing: 'centred',
    agreeing: values.map((value) => placed((value - first) * ticksPerNumber, value)),
    contrary: [],
    partial: 0,
    second: 0,
    cells: values.length,
    digitShare: 0.35,
    across: 5,
    pattern: madePattern(ticksPerNumber),
    doubts: new Set(),
    ...change,
  };
}

export interface RowPlace {
  /** In px down the picture, and px between graduations. */
  readonly y: number;
  readonly pitchPx: number;
  readonly angle?: number;
  readonly count?: number;
}

/** A row of a picture of 1200 by 800 from x = 100 on (when not turned), whose graduation 0 is there. */
export function madeRow({ y, pitchPx, angle = 0, count = 100 }: RowPlace): FollowedRow {
  const { pitch } = truthOf({
    width: 1200,
    height: 800,
    pitchPx,
    lineLength: () => 1,
  });
  const frame = rowFrame([100, y], angle);
  return { frame, pitch, range: [0, count], pattern: madePattern(10) };
}

/** A claim of `count` numbers on such a row, the first of them on graduation 0. */
export function claimOn(
  place: RowPlace,
  change: Partial<Claim> & { first: number; numbers: number },
): Required<ClaimedRow> {
  const { first, numbers, ...more } = change;
  const row = madeRow(place);
  const ticksPerNumber = more.ticksPerNumber ?? 10;
  const step = more.step ?? 1;
  const direction = more.direction ?? 1;
  const claim = madeClaim([first], {
    agreeing: Array.from({ length: numbers }, (_, i) => {
      const tick = i * ticksPerNumber;
      const at = toImage(row.frame, distanceAt(row.pitch.model, tick), 5 * place.pitchPx);
      return { ...placed(tick, first + direction * step * i), at };
    }),
    cells: numbers,
    mmPerTick: (mmPerUnit[more.unit ?? 'cm'] * step) / ticksPerNumber,
    ...more,
  });
  return { row, claim };
}
