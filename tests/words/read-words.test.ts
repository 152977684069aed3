import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLength } from '../../src/lengths/read-length.ts';
import { spoken } from '../../src/words/follow-words.ts';
import { readWords } from '../../src/words/read-words.ts';

test('every fault names the field and ends as a sentence', () => {
  fc.assert(
    fc.property(fc.string(), (typed) => {
      const read = readLength(typed, 'cm');
      if (read.ok) return;
      const said = readWords('Opening', read.fault);
      expect(said).toMatch(/^Opening: /);
      expect(said).toMatch(/[.?]$/);
      expect(said).not.toMatch(/undefined|\[object/);
    }),
  );
});

test('a fault says where it is, and what to write instead', () => {
  const read = readLength('12 cm + 1.5/2', 'cm');
  expect(read.ok ? '' : readWords('Opening', read.fault)).toBe(
    'Opening: “1.5/2” at character 9 mixes a decimal and a stroke. Write 3/4 or 0.75, or divide with ÷.',
  );
});

test('lengths are said as people say them', () => {
  expect(spoken('Hook 3. 1 5/8 in.')).toBe('Hook 3. 1 and 5/8 inches.');
  expect(spoken('15.4 cm, 3 mm')).toBe('15.4 centimetres, 3 millimetres');
});
