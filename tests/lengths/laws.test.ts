/** What holds for every length and every text. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { STEP, toGraduation } from '../../src/lengths/graduation.ts';
import { exactLength, length } from '../../src/lengths/length.ts';
import { type Reading, readLength } from '../../src/lengths/read-length.ts';
import { type ListReading, readLengths } from '../../src/lengths/read-lengths.ts';
import { type NumberReading, readCount, readNumber } from '../../src/lengths/read-number.ts';
import { remainder, showExact, shownText, showOnTape } from '../../src/lengths/show-length.ts';
import type { BenchUnit } from '../../src/lengths/unit.ts';

const steps = fc.constantFrom(...Object.values(STEP));
const units = fc.constantFrom<BenchUnit>('mm', 'cm', 'in');
const marks = fc.constantFrom('.' as const, ',' as const);
const whole = fc.integer({ min: -80_000_000, max: 80_000_000 }).map(length); // ± 10 m

describe('what is shown is read back', () => {
  test('on the graduation, in a unit of its own system', () => {
    const own = fc.constantFrom<[keyof typeof STEP, BenchUnit]>(
      ['1mm', 'mm'],
      ['1mm', 'cm'],
      ['0.5mm', 'mm'],
      ['0.5mm', 'cm'],
      ['1/8in', 'in'],
      ['1/16in', 'in'],
      ['1/32in', 'in'],
    );
    fc.assert(
      fc.property(
        own,
        fc.integer({ min: -9999, max: 9999 }),
        marks,
        units,
        (pair, count, mark, bare) => {
          const [name, unit] = pair;
          const value = length(count * STEP[name]);
          const shown = showOnTape(value, STEP[name], unit);
          expect(shown.rounded).toBe(false);
          expect(readLength(shownText(shown, mark), bare)).toEqual({
            ok: true,
            value,
            exact: true,
          });
        },
      ),
    );
  });

  test('exactly, whenever nothing was rounded; else to half the last digit', () => {
    fc.assert(
      fc.property(whole, units, marks, (value, unit, mark) => {
        const shown = showExact(value, unit);
        const read = readLength(shownText(shown, mark), 'mm');
        if (!read.ok) throw new Error(read.fault.kind);
        const last = { mm: 0.8, cm: 8, in: 20.32 }[unit];
        // One more half unit for what reading back rounds.
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(
          shown.rounded ? last / 2 + 0.5 : 0,
        );
      }),
    );
  });

  test('inches through millimetres and back lose nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 400 }), (sixtyFourths) => {
        const typed = readLength(`${sixtyFourths}/64 in`, 'mm');
        if (!typed.ok) throw new Error(typed.fault.kind);
        const metric = shownText(showExact(typed.value, 'mm', 6), '.');
        expect(readLength(metric, 'in')).toEqual({ ok: true, value: typed.value, exact: true });
        expect(shownText(showExact(typed.value, 'in'), '.')).not.toContain('.');
      }),
    );
  });
});

describe('the nearest graduation', () => {
  test('is on the tape, no more than half a graduation away, midway at the even one', () => {
    fc.assert(
      fc.property(whole, steps, (value, step) => {
        const mark = toGraduation(value, step);
        expect(Math.abs(mark % step)).toBe(0);
        expect(2 * Math.abs(value - mark)).toBeLessThanOrEqual(step);
        expect(remainder(value, step)).toBe(value - mark);
        if (2 * Math.abs(value - mark) === step) expect(Math.abs((mark / step) % 2)).toBe(0);
      }),
    );
  });

  test('midway always goes to the even one', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9999, max: 9999 }), steps, (count, step) => {
        const mark = toGraduation(exactLength((count + 0.5) * step), step) / step;
        expect(Math.abs(mark % 2)).toBe(0);
        expect(Math.abs(mark - (count + 0.5))).toBe(0.5);
      }),
    );
  });

  test('holds for quotients too', () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: 1, max: 500 }), steps, (value, count, step) => {
        const part = exactLength(value / count);
        const off = Math.abs(part - toGraduation(part, step));
        expect(off).toBeLessThanOrEqual(step / 2 + 1e-5);
      }),
    );
  });
});

describe('any text gives an answer or a fault that points into it', () => {
  const pieces = fc.constantFrom(
    ...['1', '5', '8', '0', '12', '.', ',', '/', '⁄', '½', '⅝', '-', '−', '–', '+', '×', 'x', '÷'],
    ...[' ', ' ', 'in', 'cm', 'm', 'ft', '"', "'", '’', 'L', 'l', ';', '(', 'é', '😀', '\ud800'],
  );
  const nearly = fc.array(pieces, { maxLength: 14 }).map((parts) => parts.join(''));
  const text = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme', maxLength: 400 }),
    nearly,
  );

  function check(typed: string, reading: Reading | ListReading | NumberReading): void {
    if (reading.ok) return;
    const { at, text } = reading.fault;
    expect(at).toBeGreaterThanOrEqual(0);
    expect(at).toBeLessThanOrEqual(typed.length);
    expect(typed.slice(at, at + text.length)).toBe(text);
  }

  test('and never throws', () => {
    fc.assert(
      fc.property(text, units, (typed, bare) => {
        check(typed, readLength(typed, bare));
        check(typed, readLengths(typed, bare));
        check(typed, readNumber(typed));
        check(typed, readCount(typed));
      }),
      { numRuns: 5000 },
    );
  });

  test('and white space around it changes nothing but the place', () => {
    fc.assert(
      fc.property(nearly, units, (typed, bare) => {
        const plain = readLength(typed, bare);
        const spaced = readLength(` ${typed} `, bare);
        if (plain.ok || plain.fault.kind === 'empty') {
          expect(spaced).toEqual(plain);
        } else {
          const { kind, at, text } = plain.fault;
          expect(spaced).toEqual({ ok: false, fault: { kind, at: at + 1, text } });
        }
      }),
      { numRuns: 2000 },
    );
  });
});
