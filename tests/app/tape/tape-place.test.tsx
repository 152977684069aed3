import { expect, test, vi } from 'vitest';
import type { Bench } from '../../../src/calculation/bench.ts';
import type { Calculation } from '../../../src/calculation/calculation.ts';
import { type Held, heldOf } from '../../../src/calculation/page.ts';
import { stateOf } from '../../../src/calculation/parted.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { convert } from '../../../src/calculations/convert/convert.ts';
import { benchOf } from '../../controls/helpers.ts';

vi.stubGlobal('__ENGINE_FOLDER__', 'engine/7-1-1/');
const place = await import('../../../src/app/tape/tape-place.tsx');

/** As an address holds it, before and after. */
const typedInto = (
  calculation: Calculation,
  held: Held,
  into: string,
  text: string,
  bench: Bench,
) => heldOf(place.typedInto(calculation, stateOf(held), into, text, bench));

const read = '46.32 ± 0.02 cm';

test('the number goes into the field that asked, and nothing else changes', () => {
  const start = closures.start(benchOf());
  expect(typedInto(closures, start, 'top', read, benchOf())).toEqual({ ...start, top: read });
});

test('a list gets it behind what it holds', () => {
  const levels = {
    ...convert,
    fields: () => [{ kind: 'lengths', key: 'level', label: 'Levels' }] as const,
  };
  expect(typedInto(levels, { level: '20' }, 'level', read, benchOf()).level).toBe(`20; ${read}`);
  expect(typedInto(levels, { level: '' }, 'level', read, benchOf()).level).toBe(read);
});

test('an unknown field in an address gives it to the first length there is', () => {
  expect(typedInto(convert, { length: '3' }, 'nothing', read, benchOf())).toEqual({ length: read });
});

test('where a mark was really made is kept under its mark, with the plan it is of', () => {
  const start = closures.start(benchOf());
  const made = typedInto(closures, { ...start, made: '2=12 cm' }, 'made:3', read, benchOf());
  expect(made.made).toBe(`2=12 cm; 3=${read}`);
  expect(made.plan).toMatch(/^[a-z0-9]+$/);
});

test('a mark measured before keeps that measure until the maker has chosen', () => {
  const start = { ...closures.start(benchOf()), made: '3=15.6 cm' };
  const made = typedInto(closures, start, 'made:3', read, benchOf());
  expect(made).toEqual({ ...start, asked: `3=${read}` });
});
