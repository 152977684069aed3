import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { closures } from '../../src/calculations/closures/closures.ts';
import type { ReadFaultKind } from '../../src/lengths/read-fault.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { answer, open, type } from './helpers.tsx';

afterEach(cleanup);

/** What a maker can type that is no length, one of each kind, and what the sentence must offer. */
const UNREADABLE: Record<
  Exclude<ReadFaultKind, 'not-whole' | 'too-large' | 'length-for-number'>,
  [string, RegExp]
> = {
  empty: ['', /give a number/],
  unfinished: ['5/', /something is still missing at “/],
  'not-understood': ['wide', /“wide” was not understood. Write it like/],
  'two-decimal-marks': ['1,234.5', /two decimal marks. Use one/],
  'thousands-unclear': ['1,000 mm', /“1,000” thousands or decimals\? Write 1000, or 1\./],
  'fraction-of-decimals': ['1.5/2', /^Opening: “1\.5\/2” mixes.*Write 3\/4.* or 0\.75/],
  'fraction-of-other': ['5 in / 2', /Divide with ÷/],
  'zero-denominator': ['1/0', /nothing below the stroke. Write 2, 4/],
  'divide-by-zero': ['5 ÷ 0', /can’t be divided by nothing/],
  'improper-mixed': ['1 9/8', /Write it as one number/],
  'hyphen-unclear': ['12 -5/8', /Leave a space on both sides/],
  'length-times-length': ['2 cm × 3 cm', /Take the unit off one of them/],
  'divide-by-length': ['12 ÷ 3 cm', /Divide by a plain number/],
  'too-long': ['1001 m', /over a kilometre. Check/],
  'too-much-text': ['1 + '.repeat(80), /Keep only the number/],
};

test.each(Object.entries(UNREADABLE))(
  '%s: the field and the mend are said, every field stays as typed',
  async (kind, [typed, mend]) => {
    const read = readLength(typed, 'cm');
    expect(read.ok ? 'read' : read.fault.kind).toBe(kind);
    open(closures, { top: '1,20', sewn: ' 1.2;' });
    type('Opening', typed);
    const said = (await answer()).replace(/^—/, '');
    expect(said).toMatch(/^Opening: /);
    expect(said).toMatch(mend);
    expect(said).not.toMatch(/NaN|undefined|Infinity/);
    const values = ['Opening', 'First, from the top', 'Already sewn at', 'How many'].map(
      (label) => screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`)).value,
    );
    expect(values).toEqual([typed, '1,20', ' 1.2;', '7']);
  },
);

test.each([
  ['2.5', /“2\.5” is not a whole number. Give 2 or 3/],
  ['46.3 cm ÷ 8 mm', /is not a whole number. Give 57 or 58/],
  ['46.3 cm', /“46\.3 cm” is a length. Give a plain number, or divide it by a length/],
  ['9007199254740993', /is too large a number. Check it/],
])('a count of %s is said to be none', async (typed, mend) => {
  open(closures);
  type('How many', typed);
  const said = await answer();
  expect(said).toMatch(/How many: /);
  expect(said).toMatch(mend);
  expect(screen.getByLabelText(/^How many/)).toHaveProperty('value', typed);
});

test('every mistake is said, not only the first', async () => {
  open(closures, { opening: 'wide', top: '1.2.3', count: 'few' });
  const said = await answer();
  for (const label of ['Opening: ', 'First, from the top: ', 'How many: ']) {
    expect(said).toContain(label);
  }
});

test('mended, the answer is there again at once', async () => {
  open(closures);
  type('Opening', '46.3.');
  await screen.findByText(/two decimal marks/);
  type('Opening', '46.3');
  expect(await answer()).toContain('7.1 cm apart');
});
