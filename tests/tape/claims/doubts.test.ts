import { describe, expect, test } from 'vitest';
import { doubtsOf } from '../../../src/tape/claims/doubts.ts';
import type { Component } from '../../../src/tape/numbers/components.ts';
import { digits, madeClaim, madePattern, patch, placed, readFrom } from '../made/made-rows.ts';

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

test('two are enough where the lines before a gap go on to them; one isn’t', () => {
  expect(doubtsOf(madeClaim([123, 124], { foretold: true })).size).toBe(0);
  expect(doubtsOf(madeClaim([123], { foretold: true })).has('line')).toBe(true);
  expect(doubtsOf(madeClaim([123, 124])).has('line')).toBe(true);
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

/** 103 to 106 with a first stroke so many graduations off a line; the digits begin 30 px after it. */
function hundreds(off: number, first: Component) {
  const agreeing = [103, 104, 105, 106].map((value, i) => {
    const number = placed(10 * i, value);
    const parts = [first, ...digits('00', first.x1 + 30)];
    const left = 10 * i + off - (first.width - 1) / 2 / 20;
    return { ...number, read: readFrom(parts, left, String(value)) };
  });
  return madeClaim([103], { agreeing, cells: 4 });
}

describe('numbers that all begin with 1', () => {
  const thin = patch(0, 9, 70);

  test('a graduation read as a leading 1: the stroke stands on one, apart from the digits', () => {
    expect(doubtsOf(hundreds(-2, thin))).toEqual(inDoubt('line'));
    expect(doubtsOf(hundreds(-2.5, thin))).toEqual(inDoubt());
  });

  test('a fold read as a leading 1: the stroke is taller or shorter than the digits, or off their row', () => {
    expect(doubtsOf(hundreds(-2.5, patch(0, 9, 90)))).toEqual(inDoubt('line'));
    expect(doubtsOf(hundreds(-2.5, patch(0, 9, 52)))).toEqual(inDoubt('line'));
    // Blur takes a little off the ends of a thin 1.
    expect(doubtsOf(hundreds(-2.5, patch(0, 9, 58, 6)))).toEqual(inDoubt());
    expect(doubtsOf(hundreds(-2.5, patch(0, 9, 70, 15)))).toEqual(inDoubt('line'));
  });

  test('a 1 with foot and flag is a digit wherever it stands', () => {
    expect(doubtsOf(hundreds(-2, patch(0, 25, 70)))).toEqual(inDoubt());
  });

  test('a shorter number among them proves the rest', () => {
    const four = hundreds(-2, thin);
    const agreeing = [...four.agreeing, placed(-40, 99)];
    expect(doubtsOf({ ...four, agreeing })).toEqual(inDoubt());
  });
});

describe('numbers that all have a 1 in their middle', () => {
  /** 310 to 313, their middle stroke so many graduations off a line. */
  const parted = (off: number, stroke: Component, texts = ['310', '311', '312', '313']) => {
    const parts = [patch(0, 42, 70), { ...stroke, x0: 60, x1: 60 + stroke.width - 1 }];
    const all = [...parts, patch(80 + stroke.width, 42, 70)];
    const left = off - (60 + (stroke.width - 1) / 2) / 20;
    const agreeing = texts.map((text, i) => ({
      ...placed(10 * i, Number(text)),
      read: readFrom(all, 10 * i + left, text),
    }));
    return madeClaim([Number(texts[0])], { agreeing, cells: 4 });
  };
  const thin = patch(0, 9, 70);

  test('a line between two digits read as one: the thin stroke stands on a graduation', () => {
    expect(doubtsOf(parted(0, thin))).toEqual(inDoubt('line'));
    expect(doubtsOf(parted(0.5, thin))).toEqual(inDoubt());
    expect(doubtsOf(parted(0, patch(0, 25, 70)))).toEqual(inDoubt());
  });

  test('numbers with another digit there prove it', () => {
    expect(doubtsOf(parted(0, thin, ['308', '309', '310', '311']))).toEqual(inDoubt());
  });
});

describe('a digit that all numbers lost', () => {
  const readAs = (parts: Component[]) =>
    sure.agreeing.map((number) => ({
      ...number,
      read: readFrom(parts, number.tick - 2, String(number.value)),
    }));

  test('more patches stand there than digits were read', () => {
    expect(doubtsOf({ ...sure, agreeing: readAs(digits('145')) })).toEqual(inDoubt('line'));
    const some = [...readAs(digits('145')).slice(0, 2), ...sure.agreeing.slice(2)];
    expect(doubtsOf({ ...sure, agreeing: some })).toEqual(inDoubt());
  });

  test('in numbers turned across the tape a plain 1 is a digit, too', () => {
    const turned = (y0: number, tall = 42) => patch(0, 70, tall, y0);
    const one = turned(100, 9);
    const two = [turned(0), turned(50)];
    const across = { ...sure, turned: true };
    expect(doubtsOf({ ...across, agreeing: readAs(two) })).toEqual(inDoubt());
    expect(doubtsOf({ ...across, agreeing: readAs([...two, one]) })).toEqual(inDoubt('line'));
  });

  test('of narrow type, two turned digits together are no wider than they are tall', () => {
    const agreeing = readAs([patch(0, 50, 23), patch(2, 48, 12, 39)]);
    expect(doubtsOf({ ...sure, turned: true, agreeing })).toEqual(inDoubt());
    // As one patch, longer than a digit: the second one wasn't read.
    const one = sure.agreeing.map((number) => ({
      ...number,
      value: 5,
      read: readFrom([patch(0, 50, 60)], number.tick - 2, '5'),
    }));
    expect(doubtsOf({ ...sure, turned: true, agreeing: one }).has('line')).toBe(true);
  });

  test('specks beside the digits are no digits', () => {
    const speck = patch(100, 8, 30);
    expect(doubtsOf({ ...sure, agreeing: readAs([...digits('45'), speck]) })).toEqual(inDoubt());
  });

  test('one patch is wider than the digits that were read', () => {
    expect(doubtsOf({ ...sure, agreeing: readAs([patch(0, 150, 70)]) })).toEqual(inDoubt('line'));
    expect(doubtsOf({ ...sure, agreeing: readAs([patch(0, 100, 70)]) })).toEqual(inDoubt());
  });
});

test('numbers of the other edge: far across the tape, for their height and in millimetres', () => {
  expect(doubtsOf({ ...sure, across: 17 })).toEqual(inDoubt('line'));
  expect(doubtsOf({ ...sure, across: -15 })).toEqual(inDoubt('line'));
  expect(doubtsOf({ ...sure, across: 10 })).toEqual(inDoubt());
  // Tall digits may stand farther off, and so may numbers on a small scale.
  expect(doubtsOf({ ...sure, across: 17, digitShare: 0.6 })).toEqual(inDoubt());
  expect(doubtsOf({ ...sure, across: 17, mmPerTick: 0.5 })).toEqual(inDoubt());
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
