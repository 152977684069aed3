import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm, ZERO } from '../../../src/lengths/length.ts';
import { type GrainInput, liftOf, offGrain } from '../../../src/sewing/cloth/grain.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cloth = (bow: number, ahead: number): GrainInput => ({
  ...{ wide: mm(1400), bow: mm(bow), ahead: mm(ahead) },
});

// Row 21.13: ASTM D3882 as a laboratory's guide tells it (tnlab.org); the per cent is derived.
test('28 mm of bow in 140 cm are 2 per cent', () => {
  expect(solved(offGrain(cloth(28, 0))).bow).toBe(2);
});

// Row 21.14, the same guide. Row 21.15: of a piece the greatest counts, so one reading is one answer.
test('a skew of 3 per cent turns the thread by 1.72 degrees', () => {
  const { skew, turned } = solved(offGrain(cloth(0, 42)));
  expect(skew).toBe(3);
  expect(turned).toBeCloseTo(1.72, 2);
});

// Row 21.19, arithmetic.
test('3 per cent over a hem of 50 cm lift one end by 15 mm', () => {
  expect(solved(liftOf(cloth(0, 42), mm(500)))).toBe(mm(15));
});

test('turned back by its angle the thread runs square again, whatever the cloth', () => {
  const length = (max: number) => fc.integer({ min: 1, max }).map((n) => mm(n));
  fc.assert(
    fc.property(length(3000), length(2999), length(2000), (wide, ahead, over) => {
      fc.pre(ahead < wide);
      const input = { wide, ahead, bow: mm(0) };
      const { turned } = solved(offGrain(input));
      const by = (-turned * Math.PI) / 180;
      // The thread's other end, turned about its first one.
      expect(wide * Math.sin(by) + ahead * Math.cos(by)).toBeCloseTo(0, 4);
      const lift = solved(liftOf(input, over));
      expect(lift / over).toBeCloseTo(Math.tan(-by), 4);
    }),
  );
});

test.each<[string, GrainInput, string]>([
  ['no width', { ...cloth(1, 1), wide: mm(0) }, 'clothWide'],
  ['a bow as long as the cloth is wide', cloth(1400, 0), 'bow'],
  ['less than no skew', cloth(0, -1), 'ahead'],
])('%s is refused by its field', (_, input, field) => {
  expect(offGrain(input)).toMatchObject({ ok: false, problems: [{ field }] });
});

test('cloth of no width lifts nothing, and is told so', () => {
  expect(fieldsOf(liftOf({ wide: ZERO, bow: ZERO, ahead: ZERO }, mm(500)))).toEqual(['clothWide']);
});
