import { alongRow } from '../../src/tape/picture/space.ts';
import type { ReadScale } from '../../src/tape/scales/scale.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { rowFrame } from '../tape/made/plain-places.ts';

/** Px to a millimetre of `straight`. */
export const PX = 8;

/**
 * A centimetre scale lying level through a picture of 1600 × 1200, seen square on: 0 at x = 0,
 * graduations from 10 to 190 mm read, its lines between y = 580 and 620.
 */
export function scaleAt(set: Partial<ReadScale> = {}): ReadScale {
  return {
    unit: 'cm',
    mmPerTick: 1,
    anchorTick: 0,
    anchorValue: 0,
    direction: 1,
    sure: true,
    doubts: [],
    numbers: [
      { x: 40 * PX, y: 660, value: 4 },
      { x: 120 * PX, y: 660, value: 12 },
    ],
    outline: [
      { x: 10 * PX, y: 580 },
      { x: 190 * PX, y: 580 },
      { x: 190 * PX, y: 680 },
      { x: 10 * PX, y: 680 },
    ],
    stretches: [{ from: 10, to: 190 }],
    geometry: {
      frame: rowFrame([0, 600], 0),
      model: { a: 1 / PX, b: 0, c: 0 },
      centre: alongRow(0),
      ink: 1,
      from: 0,
      to: 200,
      zoneFrom: -2.5,
      zoneTo: 2.5,
      numbersAcross: 8,
      scatter: 0.02,
      slantDoubt: 0.001,
    },
    ...set,
  };
}

export function straight(set: Partial<TapeReading> = {}): TapeReading {
  return { width: 1600, height: 1200, outcome: 'read', scales: [scaleAt()], ...set };
}
