import { expect, test, vi } from 'vitest';
import { closures } from '../../src/screens/closures/closures.ts';
import { convert } from '../../src/screens/convert/convert.ts';
import { benchOf } from '../controls/helpers.ts';

vi.stubGlobal('__ENGINE_FOLDER__', 'engine/7-1-1/');
const { typedInto } = await import('../../src/app/tape-place.tsx');

const read = '46.32 ± 0.02 cm';

test('the number goes into the field that asked, and nothing else changes', () => {
  const start = closures.start(benchOf());
  expect(typedInto(closures, start, 'top', read)).toEqual({ ...start, top: read });
});

test('a list gets it behind what it holds', () => {
  const levels = {
    ...convert,
    fields: () => [{ kind: 'lengths', key: 'level', label: 'Levels' }] as const,
  };
  expect(typedInto(levels, { level: '20' }, 'level', read).level).toBe(`20; ${read}`);
  expect(typedInto(levels, { level: '' }, 'level', read).level).toBe(read);
});

test('an unknown field in an address gives it to the first length there is', () => {
  expect(typedInto(convert, { length: '3' }, 'nothing', read)).toEqual({ length: read });
});

test('where a mark was really made is kept under its mark', () => {
  const made = typedInto(closures, { made: '2=12 cm' }, 'made:3', read);
  expect(made).toEqual({ made: `2=12 cm; 3=${read}` });
});
