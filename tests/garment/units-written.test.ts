import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Part, TextPart } from '../../src/garment/record/record.ts';
import { fieldText } from '../../src/garment/work-out/field-text.ts';
import { exactLength } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { letterOf, takenFrom, takenLength, takenNumber } from '../../src/lengths/taken.ts';
import { quantity, typed } from './trial/garments.ts';

type Unit = TextPart['unit'];
const A = letterOf(0);
const B = letterOf(1);

/** A text with A and B for what is taken, as parts typed on a bench of a unit. */
const partsOf = (text: string, unit: Unit): Part[] =>
  text
    .split(/([AB])/)
    .flatMap((one): Part[] =>
      /[AB]/.test(one) ? [quantity('q')] : one === '' ? [] : typed(one, unit),
    );
/** How it stands in the field on another bench. */
const onBench = (bench: Unit, parts: readonly Part[]) =>
  fieldText([{ text: '', unit: bench }, ...parts])
    .text.replaceAll(A, 'A')
    .replaceAll(B, 'B');

describe('what was typed in inches, opened on a bench of centimetres', () => {
  test.each([
    ['', ''],
    ['5', '5 in'],
    ['5 cm', '5 cm'],
    ['−5', '−5 in'],
    ['46-5/16', '46-5/16 in'],
    ['46 5/16 − 1', '46 5/16 in − 1 in'],
    ['5-3', '5 in-3 in'],
    ['5 - 5/16', '5 in - 5/16 in'],
    ['2 × 3', '2 × 3 in'],
    ['1; 2 ;5-1/2', '1 in; 2 in ;5-1/2 in'],
    ['1.2, 8.3', '1.2 in, 8.3 in'],
    ['2 × (3 + 4)', '2 × (3 in + 4 in)'],
    ['5 + ', '5 in + '],
  ])('“%s” is “%s”', (text, written) => {
    expect(onBench('cm', typed(text, 'in'))).toBe(written);
    expect(onBench('in', typed(text, 'in'))).toBe(text);
  });

  test.each([
    ['A', 'A'],
    ['A + 5', 'A + 5 in'],
    ['A−5', 'A−5 in'],
    ['A-5', 'A-5 in'],
    ['A -5', 'A -5 in'],
    ['5-A', '5 in-A'],
    ['5- A', '5 in- A'],
    ['5 – A', '5 in – A'],
    ['A; 5-1/2', 'A; 5-1/2 in'],
    ['A × 3+5', 'A × 3+5 in'],
    ['A × 3-5', 'A × 3-5 in'],
    ['A × 3 - 5/8', 'A × 3 - 5/8 in'],
    ['A × 2, 5', 'A × 2, 5 in'],
    ['A + B × 2 − 1', 'A + B × 2 − 1 in'],
  ])('beside what is taken “%s” is “%s”', (text, written) => {
    expect(onBench('cm', partsOf(text, 'in'))).toBe(written);
  });

  test.each([
    ['A × 3'],
    ['3 ÷ 2 × A'],
    ['A ÷ (2 + 3)'],
    ['(2 + 3) × A'],
    ['A × −3'],
    ['A × - 3'],
    ['A × 3-5/8'],
    ['A × 3-12/16'],
    ['A × (B − 1)'],
    ['(A + 1) × (B + 1)'],
    ['(A − 1) × B'],
  ])('a factor of what is taken stays one: “%s”', (text) => {
    expect(onBench('cm', partsOf(text, 'in'))).toBe(text);
  });

  test.each([
    ['2 × (A − 1)', '2 × (A − 1 in)'],
    ['(5-A) × 2', '(5 in-A) × 2'],
    ['(A)-5', '(A)-5 in'],
    ['5-(A)', '5 in-(A)'],
    ['5 + (A + 2 × (B + 1)) ÷ 2', '5 in + (A + 2 × (B + 1 in)) ÷ 2'],
    ['(A + 1) × (1 + 1) + 2', '(A + 1 in) × (1 + 1) + 2 in'],
    ['(2 + 1) × (A − 1; 3)', '(2 + 1) × (A − 1 in; 3 in)'],
    ['2 × (3 + 4) + A', '2 × (3 in + 4 in) + A'],
  ])('in a bracket with what is taken are lengths: “%s” is “%s”', (text, written) => {
    expect(onBench('cm', partsOf(text, 'in'))).toBe(written);
  });

  test.each([['(A + 1'], ['A + 1)'], [')A + 1('], ['(A) + 1) + (2'], ['A + 1) + (2 + 3']])(
    'a bracket that doesn’t close is left as it is: “%s”',
    (text) => {
      expect(onBench('cm', partsOf(text, 'in'))).toBe(text);
    },
  );

  test('as deep as can be read brackets are looked into, and no deeper', () => {
    const deep = (far: number) => `${'('.repeat(far)}A + 1${')'.repeat(far)}`;
    expect(onBench('cm', partsOf(deep(100), 'in'))).toBe(deep(100).replace('1', '1 in'));
    for (const far of [101, 100_000])
      expect(onBench('cm', partsOf(deep(far), 'in'))).toBe(deep(far));
    const wide = `A +${' '.repeat(200_000)}1`;
    expect(onBench('cm', partsOf(wide, 'in'))).toBe(`${wide} in`);
  });
});

test('each part has its own unit, and begins where it stands in the text as it is written', () => {
  const parts = [...typed('1 + '), ...typed('2 + ', 'mm'), quantity('q'), ...typed(' + 3', 'mm')];
  const field = fieldText(parts);
  expect(field.text).toBe(`1 + 2 mm + ${A} + 3 mm`);
  expect(field.starts).toEqual([0, 4, 11, 12]);
});

/** Sums of lengths, counts and one thing taken, as a maker types them. */
const whole = fc.integer({ min: 1, max: 60 }).map(String);
const fraction = fc.constantFrom('1/2', '5/8', '3/16');
const bare = fc.oneof(
  whole,
  fc.tuple(whole, fraction).map(([one, part]) => `${one} ${part}`),
  fc.tuple(whole, fraction).map(([one, part]) => `${one}-${part}`),
  fc.tuple(fc.integer({ min: 2, max: 9 }), whole).map(([times, one]) => `${times} × (${one} + 1)`),
);
const taken = fc.oneof(
  fc.constant('A'),
  whole.map((one) => `2 × (A + ${one})`),
  fc.tuple(bare, whole).map(([one, by]) => `(A − (${one})) ÷ ${by}`),
);
const sums = fc
  .tuple(
    fc.array(bare, { minLength: 1, maxLength: 3 }),
    taken,
    fc.constantFrom(' + ', ' − ', '+', ' - '),
  )
  .map(([all, one, sign]) => [...all.slice(0, 1), one, ...all.slice(1)].join(sign));

test('law: on every bench a sum comes to what it came to where it was typed', () => {
  const letters = takenFrom([takenLength(exactLength(812_345))]);
  fc.assert(
    fc.property(
      sums,
      fc.constantFrom<Unit>('cm', 'mm', 'in'),
      fc.constantFrom<Unit>('cm', 'mm', 'in'),
      (text, unit, bench) => {
        const parts = partsOf(text, unit);
        const read = (its: string, where: Unit) => readLength(its, where, '.', letters);
        const there = read(fieldText(parts).text, unit);
        expect(there.ok && there.value).not.toBe(false);
        expect(read(fieldText([{ text: '', unit: bench }, ...parts]).text, bench)).toEqual(there);
      },
    ),
    { seed: 1447, numRuns: 200 },
  );
});

describe('where it is known what is a count, C, and what a length, L', () => {
  const L = letterOf(0);
  /** As it stands on a bench of centimetres, typed on one of inches. */
  const opened = (text: string) => {
    const lengths: boolean[] = [];
    const parts = text.split(/([LC])/).flatMap((one): Part[] => {
      if (!/^[LC]$/.test(one)) return one === '' ? [] : typed(one, 'in');
      lengths.push(one === 'L');
      return [quantity(one)];
    });
    const isLength = (part: object) => JSON.stringify(part).includes('"L"');
    const read = fieldText([{ text: '', unit: 'cm' }, ...parts], isLength);
    const shown = [...read.text]
      .map((one) => (one >= L ? (lengths[one.charCodeAt(0) - L.charCodeAt(0)] ? 'L' : 'C') : one))
      .join('');
    return { read, lengths, shown };
  };
  const comesTo = (text: string, lengths: readonly boolean[], unit: Unit) => {
    const taken = takenFrom(
      lengths.map((is, i) => (is ? takenLength(exactLength(8000 * (i + 7))) : takenNumber(i + 2))),
    );
    const read = readLength(text, unit, '.', taken);
    return read.ok ? Number(read.value) : read.fault.kind;
  };

  test.each([
    ['C × (2 + L)', 'C × (2 in + L)'],
    ['(2 + L) × C', '(2 in + L) × C'],
    ['L × (2 + C)', 'L × (2 + C)'],
    ['(L + 1) × (C + 1)', '(L + 1 in) × (C + 1)'],
    ['(C + 1) × (L − 1/2) − 3', '(C + 1) × (L − 1/2 in) − 3 in'],
    ['C × 3', 'C × 3 in'],
    ['3 × C', '3 in × C'],
    ['C × 2 × 3 + L', 'C × 2 in × 3 + L'],
    ['C × 3 1/2', 'C × 3 1/2 in'],
    ['C × 3 cm', 'C × 3 cm'],
    ['L × 3', 'L × 3'],
    ['L ÷ C × 3', 'L ÷ C × 3'],
    ['C ÷ 2 × 3', 'C ÷ 2 × 3 in'],
    ['C × (C + 1) × 0.5', 'C × (C + 1) × 0.5 in'],
  ])('“%s” is “%s”, as long as it was', (text, written) => {
    const { shown, read, lengths } = opened(text);
    expect(shown).toBe(written);
    const before = fieldText(
      text
        .split(/([LC])/)
        .flatMap((one): Part[] =>
          /^[LC]$/.test(one) ? [quantity(one)] : one === '' ? [] : typed(one, 'in'),
        ),
    );
    expect(comesTo(read.text, lengths, 'cm')).toBe(comesTo(before.text, lengths, 'in'));
    expect(comesTo(before.text, lengths, 'in')).toBeTypeOf('number');
  });
});
