import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readWords } from '#words/common/read-words.ts';
import { spoken } from '#words/common/spoken.ts';
import type { ReadFaultKind } from '../../src/lengths/read-fault.ts';
import { readLength } from '../../src/lengths/read-length.ts';

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

/** One of each kind: a kind that is missing here does not compile. */
const EVERY: Record<ReadFaultKind, true> = {
  empty: true,
  unfinished: true,
  'not-understood': true,
  'two-decimal-marks': true,
  'thousands-unclear': true,
  'fraction-of-decimals': true,
  'fraction-of-other': true,
  'zero-denominator': true,
  'divide-by-zero': true,
  'improper-mixed': true,
  'hyphen-unclear': true,
  'length-times-length': true,
  'divide-by-length': true,
  'length-for-number': true,
  'too-long': true,
  'too-large': true,
  'not-whole': true,
  'too-much-text': true,
};
const kinds = Object.keys(EVERY) as ReadFaultKind[];

test('each kind has a sentence of its own, with field, piece and mend', () => {
  const said = kinds.map((kind) => readWords('Opening', { kind, at: 8, text: 'piece' }));
  for (const sentence of said) {
    expect(sentence).toMatch(/^Opening: .{12,}[.?]$/);
    expect(sentence).not.toMatch(/NaN|undefined|\[object/);
  }
  expect(new Set(said).size).toBe(kinds.length);
  const placed = said.filter((sentence) => sentence.includes('“piece” at character 9'));
  expect(placed).toHaveLength(kinds.length - 2);
});

test('a kind without words is a bug, and says so', () => {
  const unknown = { kind: 'unheard-of' as ReadFaultKind, at: 0, text: '' };
  expect(() => readWords('Opening', unknown)).toThrow('no words for "unheard-of"');
});
