import { describe, expect, test } from 'vitest';
import { answered, printable, questionFor } from '../../../src/tape/scales/question.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import type { ReadScale } from '../../../src/tape/scales/scale.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { madeScale } from '../made/made-rows.ts';

const doubted = (...doubts: ('line' | 'unit')[]) => madeScale({ sure: false, doubts });

function asking(...scales: ReadScale[]): TapeReading {
  return { width: 900, height: 600, outcome: 'ask', question: questionFor(scales), scales };
}

/** Graduation 3 of the made scale, 23 mm past the first number. */
const valueAt3 = (reading: TapeReading) => {
  const told = readingAt(reading, { x: 430, y: 310 });
  return told.ok ? { value: told.value, unit: told.unit, mm: told.mm } : told.reason;
};

describe('what is asked', () => {
  test('whether a line in the middle of the numbers is the one read, at that line', () => {
    expect(questionFor([doubted('line')])).toEqual({
      kind: 'line',
      scale: 0,
      value: 20,
      unit: 'cm',
      x: expect.closeTo(400, 6),
      y: expect.closeTo(310, 6),
    });
  });

  test('the line’s place, even where its number stands beside it', () => {
    const numbers = [{ value: 21, x: 480, y: 350 }];
    expect(questionFor([{ ...doubted('line'), numbers }])).toMatchObject({
      value: 21,
      x: expect.closeTo(500, 6),
    });
  });

  test('which line first, then the unit, at the number', () => {
    expect(questionFor([doubted('unit', 'line')]).kind).toBe('line');
    expect(questionFor([doubted('unit')])).toEqual({
      kind: 'unit',
      scale: 0,
      value: 20,
      x: 400,
      y: 350,
      choices: ['cm', 'inch'],
    });
  });

  test('what else the lines could count', () => {
    const choices = (scale: Partial<ReadScale>) => {
      const asked = questionFor([{ ...doubted('unit'), ...scale }]);
      return asked.kind === 'unit' && asked.choices;
    };
    expect(choices({ unit: 'inch', mmPerTick: 25.4 / 16 })).toEqual(['inch', 'cm']);
    expect(choices({ unit: 'mm', mmPerTick: 1 })).toEqual(['mm', 'cm']);
    expect(choices({ unit: 'cm', mmPerTick: 1 })).toEqual(['cm', 'inch']);
  });

  test('the first scale that is doubted, and a bug of a call where none is', () => {
    expect(questionFor([madeScale(), doubted('unit')]).scale).toBe(1);
    expect(questionFor([doubted('line'), doubted('unit')], 1)).toMatchObject({
      scale: 1,
      kind: 'unit',
    });
    expect(() => questionFor([madeScale()])).toThrow('all sure');
    expect(() => questionFor([{ ...doubted('line'), numbers: [] }])).toThrow('without a number');
  });
});

describe('an answer', () => {
  test('yes: the line asked about is the one', () => {
    const asked = asking(doubted('line'));
    expect(valueAt3(asked)).toBe('not-sure-yet');
    const reading = answered(asked, { kind: 'line', value: 20 });
    expect(reading.outcome).toBe('read');
    expect(reading.question).toBeUndefined();
    expect(reading.scales[0]).toMatchObject({ sure: true, doubts: [] });
    expect(valueAt3(reading)).toEqual({
      value: expect.closeTo(20.3),
      unit: 'cm',
      mm: expect.closeTo(203),
    });
  });

  test('another value moves every line by as much', () => {
    const asked = asking({ ...doubted('line'), anchorTick: -10, anchorValue: 19 });
    const reading = answered(asked, { kind: 'line', value: 120 });
    expect(valueAt3(reading)).toMatchObject({ value: expect.closeTo(120.3) });
    const backwards = asking({ ...doubted('line'), direction: -1 });
    expect(valueAt3(answered(backwards, { kind: 'line', value: 21 }))).toMatchObject({
      value: expect.closeTo(20.7),
    });
  });

  test('another value moves the numbers read as well, and what is asked next of them', () => {
    const asked = asking(doubted('line', 'unit'));
    const before = asked.scales[0]!.numbers;
    const reading = answered(asked, { kind: 'line', value: 120 });
    expect(reading.scales[0]!.numbers).toEqual(
      before.map((one) => ({ ...one, value: one.value + 100 })),
    );
    expect(reading.question).toMatchObject({ kind: 'unit', value: 120 });
  });

  test('about a doubted edge beside one that is read leaves it read, whatever is left to ask', () => {
    const scales = [madeScale(), doubted('line', 'unit')];
    const read: TapeReading = { width: 900, height: 600, outcome: 'read', scales };
    const first = answered(
      { ...read, question: questionFor(scales, 1) },
      { kind: 'line', value: 9 },
    );
    expect(first.outcome).toBe('read');
    expect(first.question).toBeUndefined();
    expect(first.scales[0]).toBe(scales[0]);
    expect(first.scales[1]).toMatchObject({ sure: false, doubts: ['unit'] });
  });

  test('can’t put a number of the scale below zero', () => {
    const asked = asking(doubted('line'));
    const numbers = asked.scales[0]!.numbers.map(({ value }) => value);
    const { least, most } = printable(asked, asked.question!);
    expect(least).toBe(20 - Math.min(...numbers));
    expect(most).toBe(10_000);
    const lowest = answered(asked, { kind: 'line', value: least });
    expect(Math.min(...lowest.scales[0]!.numbers.map(({ value }) => value))).toBe(0);
  });

  test('cm to mm: the numbers stay, each graduation is a tenth', () => {
    const reading = answered(asking(doubted('unit')), { kind: 'unit', unit: 'mm' });
    expect(reading.outcome).toBe('read');
    expect(valueAt3(reading)).toEqual({
      value: expect.closeTo(20.3),
      unit: 'mm',
      mm: expect.closeTo(20.3),
    });
    expect(reading.scales[0]!.mmPerTick).toBeCloseTo(0.1);
  });

  test('mm to cm: ten lines from 10 to 20 were centimetres on a stake', () => {
    const stake = { ...doubted('unit'), unit: 'mm' as const, anchorValue: 200 };
    const reading = answered(asking(stake), { kind: 'unit', unit: 'cm' });
    expect(valueAt3(reading)).toEqual({
      value: expect.closeTo(203),
      unit: 'cm',
      mm: expect.closeTo(2030),
    });
  });

  test('cm to inch: tenths of an inch, exactly 25.4 mm to the number (NIST Handbook 44, app. C)', () => {
    const reading = answered(asking(doubted('unit')), { kind: 'unit', unit: 'inch' });
    expect(valueAt3(reading)).toEqual({
      value: expect.closeTo(20.3),
      unit: 'inch',
      mm: expect.closeTo(20.3 * 25.4),
    });
  });

  test('to the line leaves the unit still to be asked, and then to be told', () => {
    const first = answered(asking(doubted('line', 'unit')), { kind: 'line', value: 22 });
    expect(first).toMatchObject({ outcome: 'ask', question: { kind: 'unit', scale: 0 } });
    expect(valueAt3(first)).toBe('not-sure-yet');
    const both = answered(first, { kind: 'unit', unit: 'inch' });
    expect(both.outcome).toBe('read');
    expect(valueAt3(both)).toMatchObject({ value: expect.closeTo(22.3), unit: 'inch' });
  });

  test('changes only the scale asked about', () => {
    const [one, other] = [doubted('line'), doubted('line')];
    const reading = answered(asking(one, other), { kind: 'line', value: 99 });
    expect(reading.scales[1]).toEqual(other);
  });

  test('to another question, or to none, changes nothing', () => {
    const asked = asking(doubted('line'));
    expect(answered(asked, { kind: 'unit', unit: 'inch' })).toBe(asked);
    const read: TapeReading = { width: 9, height: 9, outcome: 'read', scales: [madeScale()] };
    expect(answered(read, { kind: 'line', value: 3 })).toBe(read);
  });
});
