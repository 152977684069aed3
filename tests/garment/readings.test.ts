import fc from 'fast-check';
import { expect, test } from 'vitest';
import { begin } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Parts } from '../../src/garment/record/record.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

/** Invented: hooks an exact 5 cm apart, a hem, and what is summed of them. */
const work = (
  opening: Parts,
  { depth = typed('3'), sides }: { depth?: Parts; sides?: readonly string[] } = {},
) =>
  begin(
    garmentOf({
      quantities: {
        sum: { name: 'Sum', kind: 'length', rank: 1, parts: typed('48.7 ± 0.2 cm + 1') },
        none: {
          ...{ name: 'Nothing', kind: 'length', rank: 2 },
          parts: [output('hem', 'allowance'), ...typed(' − '), output('hem', 'depth')],
        },
        twice: {
          ...{ name: 'Twice', kind: 'length', rank: 3 },
          parts: [output('hem', 'depth'), ...typed(' + '), output('hem', 'depth')],
        },
      },
      works: {
        hooks: {
          ...{ name: 'Hooks', calculation: 'closures', rank: 4, ...(sides && { sides }) },
          fields: {
            ...{ opening, pitch: typed('5'), top: typed('1.2'), bottom: typed('2.5') },
            ...{ by: typed('exact'), ends: typed('given') },
          },
        },
        hem: {
          ...{ name: 'Hem', calculation: 'hem', rank: 5 },
          fields: {
            ...{ depth, given: typed('depth'), turn: typed('1'), style: typed('unequal') },
            ...{ shape: typed('straight'), edgeStitch: typed('0.2'), taper: typed('none') },
          },
        },
      },
    }),
    KNOWN,
  ).answer;

const at = (answer: ReturnType<typeof work>, key: string) => {
  const result = answer.values.get(key);
  if (!result?.ok) throw new Error(JSON.stringify(result));
  return result;
};
const COUNT = homeOf('hooks', '', 'count');

test('a length read off a tape in a work’s own field is worked out at both its ends', () => {
  // (48.7 − 1.2 − 2.5) ÷ 5 = 9 spaces to the hair: 0.2 less, and there is one hook less.
  const count = at(work(typed('48.7 ± 0.2 cm')), COUNT);
  expect(count.value).toBe(10);
  expect(Object.values(count.ends)).toEqual([[9, 10]]);
  expect(at(work(typed('48.7')), COUNT).ends).toEqual({});
});

test('its doubt goes through sums and products as it should, in a quantity too', () => {
  const doubled = at(work(typed('(24.35 ± 0.1 cm) × 2')), homeOf('hooks', '', 'marks'));
  expect(doubled.value).toMatchObject({ length: mm(487) });
  expect(
    Object.values(doubled.ends).map((pair) =>
      pair.map((end) => (end as { length: number }).length),
    ),
  ).toEqual([[mm(485), mm(489)]]);
  const sum = at(work(typed('48.7')), homeOf('sum'));
  expect(sum.value).toBe(mm(497));
  expect(plusMinus(sum)).toBeCloseTo(mm(2), 6);
});

test('one reading in two numbers of a work is one: their difference has none of it, their sum twice', () => {
  const answer = work(typed('48.7'), { depth: typed('3 ± 0.1 cm') });
  expect(plusMinus(at(answer, homeOf('hem', '', 'allowance')))).toBeCloseTo(mm(1), 6);
  expect(plusMinus(at(answer, homeOf('none')))).toBe(0);
  expect(plusMinus(at(answer, homeOf('twice')))).toBeCloseTo(mm(2), 6);
});

test('what all sides share is in doubt once', () => {
  const answer = work(typed('48.7 ± 0.2 cm'), { sides: ['left', 'right'] });
  const [left, right] = ['left', 'right'].map((side) => at(answer, homeOf('hooks', side, 'count')));
  expect(Object.keys(left?.ends ?? {})).toEqual(Object.keys(right?.ends ?? {}));
});

test.each([
  ['1 m 46 ± 0.1 cm', mm(1460)],
  ['48.7 ± 0 cm', mm(487)],
])('“%s” is read as it was, without a doubt that can’t be told', (text, long) => {
  const row = at(work(typed(text)), homeOf('hooks', '', 'marks'));
  expect(row.value).toMatchObject({ length: long });
  expect(row.ends).toEqual({});
});

test('beside a link the letters don’t meet', () => {
  const row = at(work([quantity('sum'), ...typed(' − 1 ± 0.1 cm')]), homeOf('hooks', '', 'marks'));
  expect(row.value).toMatchObject({ length: mm(487) });
  expect(Object.keys(row.ends)).toHaveLength(2);
});

test('law: a reading moves a number by as much as typing it so much more does', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 999 }),
      fc.integer({ min: 1, max: 20 }),
      (tenths, off) => {
        const text = (x: number) => (x / 10).toFixed(1);
        const home = homeOf('hem', '', 'allowance');
        const hem = (depth: string) => at(work(typed('48.7'), { depth: typed(depth) }), home);
        const read = hem(`${text(tenths)} ± ${text(off)} cm`);
        const [[low, high] = []] = Object.values(read.ends);
        expect([low, read.value, high]).toEqual(
          [tenths - off, tenths, tenths + off].map((x) => hem(text(x)).value),
        );
      },
    ),
    { seed: 1421, numRuns: 60 },
  );
});
