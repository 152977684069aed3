import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, LONGEST, mm } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { readLengths } from '../../src/lengths/read-lengths.ts';
import { readCount, readNumber } from '../../src/lengths/read-number.ts';
import {
  letterOf,
  takenFrom,
  takenLength,
  takenNumber,
  withoutLetters,
} from '../../src/lengths/taken.ts';

const [A, B] = [letterOf(0), letterOf(1)];

test('a length that is taken is a length in any sum, and a count as a number that is typed', () => {
  const taken = takenFrom([takenLength(mm(463)), takenNumber(7)]);
  const read = (text: string) => readLength(text, 'cm', '.', taken);
  expect(read(`${A} + 1.2`)).toMatchObject({ value: mm(475) });
  expect(read(`(${A} − 3.7) ÷ ${B}`)).toMatchObject({ value: mm(426 / 7), exact: false });
  expect(read(`${B} × 2`)).toMatchObject({ value: mm(140) });
  expect(read(`${A} ${B}`)).toMatchObject({ ok: false });
  expect(read(`${A} × ${A}`)).toMatchObject({ fault: { kind: 'length-times-length' } });
  expect(readLengths(`4; ${A}`, 'cm', '.', taken)).toMatchObject({ values: [mm(40), mm(463)] });
  expect(readCount(`${B} + 1`, taken)).toEqual({ ok: true, value: 8 });
  expect(readCount(`${A} ÷ 1 mm`, taken)).toEqual({ ok: true, value: 463 });
  expect(readNumber(A, taken)).toMatchObject({ fault: { kind: 'length-for-number' } });
});

test('a letter for which nothing is taken is not understood, and can’t be typed', () => {
  expect(readLength(A, 'cm')).toMatchObject({ fault: { kind: 'not-understood' } });
  expect(readLength(B, 'cm', '.', takenFrom([takenNumber(1)]))).toMatchObject({ ok: false });
  expect(withoutLetters(`1${A}2`)).toBe('1\ufffd2');
});

test('whatever fraction of a unit a length has, it is taken exactly', () => {
  const size = LONGEST / 4;
  const any = fc.double({ min: -size, max: size, noNaN: true });
  fc.assert(
    fc.property(any, fc.integer({ min: 1, max: 999 }), (value, n) => {
      const taken = takenFrom([takenLength(exactLength(value))]);
      // n of it less n − 1 of it is it again: halves go to the even unit, as everywhere.
      const read = readLength(`${n} × ${A} − ${n - 1} × ${A}`, 'cm', '.', taken);
      const below = Math.floor(value);
      const part = value - below;
      const up = part > 0.5 || (part === 0.5 && below % 2 !== 0);
      expect(read).toMatchObject({ ok: true, value: below + (up ? 1 : 0) + 0 });
      expect(readLength(`${A} − ${A}`, 'cm', '.', taken)).toMatchObject({ value: 0, exact: true });
    }),
    { numRuns: 300, seed: 1401 },
  );
});
