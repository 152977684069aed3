import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { tooFar, tooMuchIn, tooMuchKept } from '../../src/garment/actions/too-much.ts';
import { MOST_ROW } from '../../src/garment/record/limits.ts';
import type { Parts } from '../../src/garment/record/record.ts';
import { LONGEST } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
/** A kilometre is the longest length there is: 39,370 inches are less, 39,371 more (25.4 mm each). */
const TOO_LONG = typed('1000000.1', 'mm');
const work = (calculation: string, fields: object) => ({ name: 'W', calculation, rank: 1, fields });
const record = garmentOf({
  quantities: {
    long: { name: 'L', kind: 'length', rank: 1, parts: typed('900', 'cm') },
    odd: 7,
    none: null,
    newer: { name: 'N', kind: 'angle', rank: 1, parts: [] },
  },
  works: {
    hem: work('toy-hem', { depth: typed('2') }),
    hooks: work('closures', { count: typed('7') }),
    follow: work('toy-follow', {}),
    odd: 7,
    none: null,
  },
});
const START = begin(record, KNOWN);
const put = (place: object, parts: Parts) =>
  act(START, { do: 'choose', place, parts, now } as Action).refused;
const over = (limit: string) => ({ why: 'limit', limit });
const places = (many: number) => typed(Array.from({ length: many }, () => '1').join(';'));

describe('a list of places', () => {
  const sewn = { work: 'hooks', field: 'sewn' };
  const row = { work: 'follow', field: 'row' };

  test.each([[sewn], [row]])('has as many as a row may have: %o', (place) => {
    expect(tooMuchIn(START, place, places(MOST_ROW))).toBeUndefined();
  });

  test.each([[sewn], [row]])('has no more than that: %o', (place) => {
    expect(tooMuchIn(START, place, places(MOST_ROW + 1))).toBe('row');
  });

  test('has none that is too long', () => {
    for (const place of [sewn, row]) {
      expect(put(place, typed('12; 1000.1 m'))).toEqual(over('length'));
      expect(put(place, typed('12; 1000 m'))).toBeUndefined();
    }
  });

  test('is looked at also where one of them is taken, which has its own limits', () => {
    const long = quantity('long');
    expect(put(sewn, [...typed('1000.1 m; '), long])).toEqual(over('length'));
    expect(put(sewn, [...typed('1000 m; '), long])).toBeUndefined();
    expect(put(row, [long])).toBeUndefined();
    expect(put({ work: 'hem', field: 'depth' }, [...typed('2000 × '), long])).toBeUndefined();
  });
});

test('what a field of a damaged work or number would have is not known, and nothing is refused for it', () => {
  for (const place of [
    { quantity: 'odd' },
    { quantity: 'newer' },
    { work: 'odd', field: 'depth' },
  ]) {
    expect(put(place, TOO_LONG)).toBeUndefined();
  }
});

describe('what was measured on a page', () => {
  const page = (u: string | undefined, ...made: Record<string, string>[]) => ({
    draft: u === undefined ? {} : { u },
    runs: made.map((one) => ({ planned: {}, made: one })),
  });

  test.each([
    ['in', [{ 1: '39370' }], undefined],
    ['in', [{ 1: '39371' }], 'length'],
    ['cm', [{ 1: '39371' }], undefined],
    ['mm', [{ 1: '1000000.1' }], 'length'],
    // Without a unit, as on a new bench, in centimetres.
    [undefined, [{ 1: '39371' }], undefined],
    [undefined, [{ 1: '100000.1' }], 'length'],
    // One of several, in one of several rows.
    ['cm', [{ 1: '1' }, { 1: '2', 2: '2 km' }], undefined],
    ['cm', [{ 1: '1' }, { 1: '2', 2: '1001 m' }], 'length'],
    // What was said instead of a number is no place, and none too far away.
    ['cm', [{ 1: 'at the dart', 2: '' }], undefined],
    ['cm', [], undefined],
  ])('in %s made at %j: %s', (u, made, limit) => {
    expect(tooFar(page(u, ...(made as Record<string, string>[])))).toBe(limit);
  });
});

describe('what is kept as a whole', () => {
  const kept = (set: object) =>
    tooMuchKept({ works: {}, quantities: {}, facts: {}, ...set } as never, KNOWN);
  const fact = { home: 'a||b', shown: 8, plan: 8, tape: 8, rule: 1, read: '', when: 1 };
  const fine = work('toy-hem', { depth: typed('1000', 'cm') });

  test('has nothing made too far away, neither as shown nor as measured', () => {
    expect(
      kept({ facts: { a: fact, b: { home: 'a||c', before: true, when: 1 } } }),
    ).toBeUndefined();
    expect(kept({ facts: { a: fact, b: { ...fact, shown: LONGEST + 1 } } })).toBe('length');
    expect(kept({ facts: { a: fact, b: { ...fact, measured: -LONGEST - 1 } } })).toBe('length');
    expect(kept({ facts: { a: { ...fact, shown: LONGEST, measured: -LONGEST } } })).toBeUndefined();
  });

  test('has no field with too much, in whichever work or number it is', () => {
    const far = work('toy-hem', { depth: typed('2'), round: TOO_LONG });
    const number = (parts: Parts) => ({ name: 'n', kind: 'length', rank: 1, parts });
    expect(kept({ works: { fine }, quantities: { a: number(typed('2')) } })).toBeUndefined();
    expect(kept({ works: { fine, far } })).toBe('length');
    expect(
      kept({ works: { fine }, quantities: { a: number(typed('2')), b: number(TOO_LONG) } }),
    ).toBe('length');
    // A work that isn’t known here has fields nobody can read, by whatever name.
    expect(kept({ works: { far: { ...far, calculation: 'trellis' } } })).toBeUndefined();
    expect(kept({ works: { far: work('toy-hem', { toString: TOO_LONG }) } })).toBeUndefined();
  });
});
