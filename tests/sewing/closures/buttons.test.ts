import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { BUTTON_SIZES, nearestButton } from '../../../src/sewing/closures/buttons.ts';
import { answer, problems, typed } from './closures-cases.ts';

// 40 lines to the inch: sizes.com and workroombuttons.com (trade pages). The diameters are
// derived here: lines × 0.635 mm.
test('sizes in lines', () => {
  expect(BUTTON_SIZES.map(({ lines, diameter }) => [lines, toMm(diameter)])).toEqual([
    [14, 8.89],
    [16, 10.16],
    [18, 11.43],
    [20, 12.7],
    [22, 13.97],
    [24, 15.24],
    [28, 17.78],
    [30, 19.05],
    [32, 20.32],
    [36, 22.86],
    [40, 25.4],
    [45, 28.575],
    [50, 31.75],
    [60, 38.1],
  ]);
});

// US Army TM 10-8400-201-23, §5-6: shirt and trouser buttons are 30 line. 3/4 in derived here.
test('a 30 line button is 3/4 in', () => {
  expect(answer(nearestButton(inches(3 / 4)))).toMatchObject({ size: { lines: 30 }, wider: 0 });
});

test('midway between 14 and 16 lines, the smaller', () => {
  expect(answer(nearestButton(inches(15 / 40))).size.lines).toBe(14);
});

// Millimetre sizes of workroombuttons.com and gentsshop.co.uk (trade pages), which conflict.
test.each([
  [10, 16],
  [11, 18],
  [12.5, 20],
  [14, 22],
  [15, 24],
  [15.5, 24],
  [18, 28],
  [19, 30],
  [23, 36],
  [25, 40],
  [25.5, 40],
  [28.5, 45],
  [31.5, 50],
  [38, 60],
])('a button sold as %d mm is %d line', (millimetres, lines) => {
  expect(answer(nearestButton(mm(millimetres))).size.lines).toBe(lines);
});

// gentsshop.co.uk (a trade page) sells 20 line as 12 mm: 0.7 mm short, and nearer to 18 line.
test('a rounding in the trade too rough to be undone', () => {
  expect(answer(nearestButton(mm(12))).size.lines).toBe(18);
});

test('no other size is nearer', () => {
  fc.assert(
    fc.property(typed(1, 60), (diameter) => {
      const { size, wider } = answer(nearestButton(diameter));
      expect(size.diameter - diameter).toBe(wider);
      for (const other of BUTTON_SIZES) {
        expect(Math.abs(wider)).toBeLessThanOrEqual(Math.abs(other.diameter - diameter));
      }
    }),
  );
});

test('a button of no size is a problem', () => {
  expect(problems(nearestButton(ZERO))[0]).toMatchObject({ field: 'diameter' });
});
