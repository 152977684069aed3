import { describe, expect, test } from 'vitest';
import type { PlacedNumber } from '../../src/tape/claim.ts';
import type { Component } from '../../src/tape/components.ts';
import { doubtsOf } from '../../src/tape/doubts.ts';
import { madeClaim, madePattern, placed } from './made-rows.ts';

const sure = madeClaim([45, 46, 47, 48, 49]);
const inDoubt = (...doubts: string[]) => new Set(doubts);

test('five numbers that agree leave nothing to doubt', () => {
  expect(doubtsOf(sure)).toEqual(inDoubt());
});

test('what reading itself left open stays open', () => {
  expect(doubtsOf({ ...sure, doubts: new Set(['unit'] as const) })).toEqual(inDoubt('unit'));
});

describe('few numbers', () => {
  const three = madeClaim([45, 46, 47]);

  test('two, or one read three times, don’t name a line', () => {
    expect(doubtsOf(madeClaim([45, 46]))).toEqual(inDoubt('line'));
    const same = [placed(0, 45), placed(0, 45), placed(10, 46), placed(10, 46)];
    expect(doubtsOf({ ...sure, agreeing: same })).toEqual(inDoubt('line'));
  });

  test('three are enough where lines are divided as the numbers say, and all was read', () => {
    expect(doubtsOf(three)).toEqual(inDoubt());
  });

  test('three are too few where the lines tell nothing, or something else', () => {
    expect(doubtsOf({ ...three, pattern: madePattern(10, false) })).toEqual(inDoubt('line'));
    expect(doubtsOf({ ...three, pattern: madePattern(16) })).toEqual(inDoubt('line'));
  });

  test('three are too few beside one that lost a digit, one that disagrees, or many not read', () => {
    expect(doubtsOf({ ...three, partial: 1 })).toEqual(inDoubt('line'));
    expect(doubtsOf({ ...three, contrary: [placed(30, 7)] })).toEqual(inDoubt('line'));
    expect(doubtsOf({ ...three, cells: 7 })).toEqual(inDoubt('line'));
  });

  test('three around a hundred that all begin with 1: a stroke read as a digit', () => {
    expect(doubtsOf(madeClaim([103, 104, 105]))).toEqual(inDoubt('line'));
    expect(doubtsOf(madeClaim([15, 16, 17]))).toEqual(inDoubt('line'));
  });

  test('three past a hundred in centimetres: which hundred rests on one digit', () => {
    expect(doubtsOf(madeClaim([203, 204, 205]))).toEqual(inDoubt('line'));
    const mm = { unit: 'mm' as const, step: 10, mmPerTick: 1 };
    const tens = [placed(0, 230), placed(10, 240), placed(20, 250)];
    expect(doubtsOf(madeClaim([230], { ...mm, agreeing: tens, cells: 3 }))).toEqual(inDoubt());
  });

  test('99, 100, 101: the shorter one proves the longer', () => {
    expect(doubtsOf(madeClaim([99, 100, 101]))).toEqual(inDoubt());
  });
});

test('contrary numbers: nearly half as many say something else', () => {
  const contrary = [placed(50, 7), placed(60, 8)];
  expect(doubtsOf({ ...sure, contrary })).toEqual(inDoubt());
  expect(doubtsOf({ ...sure, contrary: [...contrary, placed(70, 9)] })).toEqual(inDoubt('line'));
});

test('a lost leading digit: more numbers lack one than have all', () => {
  expect(doubtsOf({ ...sure, partial: 5 })).toEqual(inDoubt());
  expect(doubtsOf({ ...sure, partial: 6 })).toEqual(inDoubt('line'));
});

/** A digit on the sheet: its left edge, width and height in sheet pixels (20 to a graduation). */
function digit(x0: number, width: number, height: number): Component {
  return { id: x0, x0, x1: x0 + width - 1, y0: 0, y1: height - 1, width, height, area: 9 } as Component;
}

/** A number whose cell begins at the middle of its first stroke, so many graduations off its line. */
function withDigits(tick: number, value: number, off: number, first: Component): PlacedNumber {
  const number = placed(tick, value);
  const x0 = first.x0;
  const left = tick + off - first.width / 2 / 20;
  const parts = [first, digit(x0 + 20, 24, 40), digit(x0 + 50, 24, 40)];
  const cell = { ...number.read.cell, components: parts, x0, x1: x0 + 73, left, right: left + 73 / 20 };
  return { ...number, read: { ...number.read, cell } };
}

describe('numbers that all begin with 1', () => {
  const hundreds = (off: number, first: Component) =>
    madeClaim([103], {
      agreeing: [103, 104, 105, 106].map((value, i) => withDigits(10 * i, value, off, first)),
      cells: 4,
    });

  test('a graduation read as a leading 1: the stroke stands on one', () => {
    expect(doubtsOf(hundreds(-1, digit(0, 4, 40)))).toEqual(inDoubt('line'));
    expect(doubtsOf(hundreds(-0.5, digit(0, 4, 40)))).toEqual(inDoubt());
  });

  test('a fold read as a leading 1: the stroke is taller or shorter than the digits', () => {
    expect(doubtsOf(hundreds(-0.5, digit(0, 4, 50)))).toEqual(inDoubt('line'));
    expect(doubtsOf(hundreds(-0.5, digit(0, 4, 30)))).toEqual(inDoubt('line'));
  });

  test('a 1 with foot and flag is a digit wherever it stands', () => {
    expect(doubtsOf(hundreds(-1, digit(0, 16, 40)))).toEqual(inDoubt());
  });

  test('a shorter number among them proves the rest', () => {
    const four = hundreds(-1, digit(0, 4, 40));
    const agreeing = [...four.agreeing, placed(-40, 99)];
    expect(doubtsOf({ ...four, agreeing })).toEqual(inDoubt());
  });
});

describe('numbers out of place', () => {
  const moved = (ticks: number) => [...sure.agreeing.slice(0, 4), placed(40 + ticks, 49)];

  test('a slipped graduation or a second row: one stands a quarter of the way to the next', () => {
    expect(doubtsOf({ ...sure, agreeing: moved(2.4) })).toEqual(inDoubt());
    expect(doubtsOf({ ...sure, agreeing: moved(2.6) })).toEqual(inDoubt('line'));
    expect(doubtsOf({ ...sure, agreeing: moved(-2.6) })).toEqual(inDoubt('line'));
  });

  test('all equally far beside their lines are in place', () => {
    const agreeing = sure.agreeing.map(({ tick, value }) => placed(tick - 3, value));
    expect(doubtsOf({ ...sure, agreeing })).toEqual(inDoubt());
  });

  test('values that fall along the row are in place', () => {
    const agreeing = [49, 48, 47, 46, 45].map((value, i) => placed(10 * i, value));
    expect(doubtsOf({ ...sure, agreeing, direction: -1, anchorValue: 49 })).toEqual(inDoubt());
  });
});
