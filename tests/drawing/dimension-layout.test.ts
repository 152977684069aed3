import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension, Dimensioned } from '../../src/drawing/dimension.ts';
import { layOut, type Sheet } from '../../src/drawing/dimension-layout.ts';
import { faultsOf } from './dimension-faults.ts';

/** A small phone, and the same with letters twice as large. */
const PHONE: Sheet = { width: 328, drawing: 190, letter: { wide: 8.5, high: 20 }, row: 24 };
const LARGE: Sheet = { ...PHONE, letter: { wide: 17, high: 40 }, row: 48 };

const point = fc.record({
  x: fc.double({ min: -2000, max: 2000, noNaN: true }),
  y: fc.double({ min: -2000, max: 2000, noNaN: true }),
});
const dimension = fc.record({
  from: point,
  to: point,
  text: fc.constantFrom('7', '46.3', '24 13/16 in', '102.35 cm', '1,200 holes'),
  by: fc.constant({ given: 'width' }),
});
const drawn = fc
  .array(dimension, { maxLength: 14 })
  .map((dimensions): Dimensioned => ({ name: 'Any', toScale: true, shapes: [], dimensions }));

describe('dimensions of a drawing', () => {
  test.each([
    ['on a small phone', PHONE],
    ['at twice the letters', LARGE],
  ])('labels never lie on each other or leave it, %s', (_, sheet) => {
    fc.assert(
      fc.property(drawn, (one) => {
        expect(faultsOf(layOut(one, sheet))).toEqual([]);
      }),
      { numRuns: 1000, seed: 1310 },
    );
  });

  const across = (from: number, to: number, y = 0): Dimension => ({
    from: { x: from, y },
    to: { x: to, y },
    text: '12',
    by: { given: 'width' },
  });

  test('lines end where they measure, at the scale of the drawing', () => {
    const layout = layOut(
      { name: '', toScale: true, shapes: [], dimensions: [across(0, 100), across(0, 25)] },
      PHONE,
    );
    const length = (i: number) => {
      const [from, to] = layout.dimensions[i]?.line ?? [];
      return (to?.x ?? 0) - (from?.x ?? 0);
    };
    // Shorter ones first: one stands nearer the drawing.
    expect(length(1) / length(0)).toBeCloseTo(4, 9);
    expect(length(1)).toBeCloseTo(PHONE.width - 16, 9);
  });

  test('those that have room beside each other share a row', () => {
    const layout = layOut(
      { name: '', toScale: true, shapes: [], dimensions: [across(0, 50), across(50.1, 100)] },
      PHONE,
    );
    const [one, two] = layout.dimensions;
    // Their lines all but meet: each keeps room to be told apart, so they stand under each other.
    expect(one?.label.y).not.toBe(two?.label.y);
    const parted = layOut(
      { name: '', toScale: true, shapes: [], dimensions: [across(0, 40), across(60, 100)] },
      PHONE,
    );
    expect(parted.dimensions[0]?.label.y).toBe(parted.dimensions[1]?.label.y);
  });

  test('labels beside it stand in the order of their heights', () => {
    const upright = (from: number, to: number, text: string): Dimension => ({
      from: { x: 0, y: from },
      to: { x: 0, y: to },
      text,
      by: { found: 'depth' },
    });
    const layout = layOut(
      {
        name: '',
        toScale: true,
        shapes: [],
        dimensions: [upright(90, 100, 'low'), upright(0, 10, 'high'), upright(0, 100, 'whole')],
      },
      PHONE,
    );
    const order = [...layout.dimensions].sort((one, other) => one.label.y - other.label.y);
    expect(order.map(({ dimension: { text } }) => text)).toEqual(['high', 'whole', 'low']);
  });
});
