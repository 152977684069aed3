/**
 * Published: Art in Clothing Selection (row 5.6): a button of 1 in, 1/4 in thick, takes 1 1/4 in, 1/8 in past the centre line;
 * row 5.1: 8 buttons, 15 in from first to last. Row 5.11: along the edge the button sits within the top 1/8 in.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, inches, mm, toInches } from '../../../src/lengths/length.ts';
import { type Buttonhole, buttonhole } from '../../../src/sewing/closures/buttonhole.ts';
import { buttonholeRow } from '../../../src/sewing/closures/buttonhole-row.ts';
import { spaceClosures } from '../../../src/sewing/closures/closures.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { byCount, opening, typed } from './closures-cases.ts';

const INCH = { diameter: inches(1), thickness: inches(1 / 4), rule: 'diameter-thickness' } as const;
const hole = (direction: 'horizontal' | 'vertical'): Buttonhole =>
  solved(buttonhole({ ...INCH, direction }));

test('5.1 and 5.6: eight buttons over 15 in; across the edge each hole lies level with its button', () => {
  const buttons = solved(spaceClosures(opening(inches(15), byCount(8), {}))).run.marks;
  const places = buttons.map(({ at }) => at);
  const row = solved(buttonholeRow(hole('horizontal'), 'horizontal', places));
  expect(row.marks.map(({ at }) => at)).toEqual(places);
  expect(toInches(row.marks[1]!.at)).toBeCloseTo(15 / 7, 6);
  expect(row.length).toBe(inches(15));
});

test('5.11: along the edge each begins 1/8 in above its button, and the last ends 1 1/8 in below', () => {
  const places = [2, 5, 8].map((at) => exactLength(inches(at)));
  const row = solved(buttonholeRow(hole('vertical'), 'vertical', places));
  expect(row.marks.map(({ at, label }) => [label, toInches(at)])).toEqual([
    ['1', 1.875],
    ['2', 4.875],
    ['3', 7.875],
  ]);
  expect(toInches(row.length)).toBe(7.875 + 1.25);
});

test('refused: no place, one above the zero, two at one place, holes that run into each other', () => {
  const of = (places: number[], direction: 'horizontal' | 'vertical' = 'vertical') =>
    buttonholeRow(
      hole(direction),
      direction,
      places.map((at) => exactLength(inches(at))),
    );
  expect(fieldsOf(of([]))).toEqual(['follow']);
  expect(fieldsOf(of([0.1, 4]))).toEqual(['follow']);
  expect(fieldsOf(of([0.125, 4]))).toEqual([]);
  expect(fieldsOf(of([0.1, 4], 'horizontal'))).toEqual([]);
  expect(fieldsOf(of([2, 2], 'horizontal'))).toEqual(['follow']);
  expect(of([2, 3.25, 6])).toMatchObject({ problems: [{ kind: 'overlap', pitch: inches(1.25) }] });
  expect(fieldsOf(of([2, 3.26, 6]))).toEqual([]);
  expect(fieldsOf(of([2, 3, 6], 'horizontal'))).toEqual([]);
  expect(fieldsOf(of([2]))).toEqual([]);
});

test('as far from each other as the buttons, wherever they lie', () => {
  const steps = fc.array(typed(40, 120), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(steps, fc.constantFrom('horizontal', 'vertical'), (all, direction) => {
      let at = 0;
      const places = all.map((step) => {
        at += step;
        return exactLength(at);
      });
      const { marks } = solved(buttonholeRow(hole(direction), direction, places));
      const off = marks.map((mark, i) => places[i]! - mark.at);
      expect(new Set(off)).toEqual(new Set([direction === 'vertical' ? mm(3.175) : 0]));
    }),
    { numRuns: 100, seed: 511 },
  );
});
