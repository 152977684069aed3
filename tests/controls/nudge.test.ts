import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nudge, nudgeCount } from '../../src/controls/nudge.ts';
import { STEP } from '../../src/lengths/graduation.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { benchOf } from './helpers.ts';

const MM = STEP['1mm'];

test('a nudge moves the last number by a graduation of its tape', () => {
  expect(nudge('46.3', benchOf(), MM)).toBe('46.4');
  expect(nudge('46.3', benchOf({ decimalMark: ',' }), MM)).toBe('46,4');
  expect(nudge('5/8 in', benchOf(), STEP['1/16in'])).toBe('11/16 in');
  expect(nudge('1 cm + 5', benchOf(), MM)).toBe('1 cm + 5.1');
});

test('a number off the graduations goes to the next one in that direction', () => {
  expect(nudge('1.57', benchOf(), MM)).toBe('1.6');
  expect(nudge('1.57', benchOf(), -MM)).toBe('1.5');
});

test('it starts at nothing, never goes below it, and leaves alone what it can’t read', () => {
  expect(nudge('', benchOf(), MM)).toBe('0.1');
  expect(nudge('0', benchOf(), -MM)).toBe('0');
  expect(nudge('12 -5/8', benchOf(), MM)).toBe('12 -5/8');
  expect(nudge('2 yd', benchOf(), MM)).toBe('2 yd');
});

test('up and down again comes back to the same graduation', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20_000 }), fc.boolean(), (marks, inInches) => {
      const bench = benchOf({ unit: inInches ? 'in' : 'mm' });
      const step = inInches ? STEP['1/16in'] : MM;
      const text = nudge(inInches ? '0' : String(marks), bench, step);
      const read = readLength(nudge(text, bench, -step), bench.unit);
      expect(read).toMatchObject({ ok: true, value: inInches ? 0 : marks * 8000 });
    }),
  );
});

test('a count moves by one and stays whole', () => {
  expect(nudgeCount('7', 1)).toBe('8');
  expect(nudgeCount('0', -1)).toBe('0');
  expect(nudgeCount('', 1)).toBe('1');
  expect(nudgeCount('2.5', 1)).toBe('2.5');
});

test('from anywhere a nudge lands on the next graduation, never more than one away', () => {
  const typed = fc.record({
    over: fc.nat(100_000),
    unit: fc.constantFrom('mm', 'cm', 'in'),
    up: fc.boolean(),
  });
  fc.assert(
    fc.property(typed, ({ over, unit, up }) => {
      const step = unit === 'in' ? STEP['1/16in'] : MM;
      const text = `${over / 100} ${unit}`;
      const before = readLength(text, 'cm');
      const after = readLength(nudge(text, benchOf(), up ? step : -step), 'cm');
      if (!before.ok || !after.ok) throw new Error(text);
      expect(after.value % step).toBe(0);
      if (up) expect(after.value).toBeGreaterThan(before.value);
      expect(Math.abs(after.value - before.value)).toBeLessThanOrEqual(step);
    }),
  );
});
