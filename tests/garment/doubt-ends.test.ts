import { expect, test } from 'vitest';
import { readDigest } from '../../src/garment/work-out/digest.ts';
import { plusMinus, plusMinusAt, through } from '../../src/garment/work-out/doubt.ts';
import { fieldText, isLetter, partAt } from '../../src/garment/work-out/field-text.ts';
import { type Ends, type Here, nothing, type Value } from '../../src/garment/work-out/result.ts';
import { exactLength, length } from '../../src/lengths/length.ts';
import { letterOf } from '../../src/lengths/taken.ts';
import type { Run } from '../../src/sewing/run.ts';
import { quantity, typed } from './trial/garments.ts';

const here = (value: Value, ends: Ends = {}): Here => ({ ok: true, value, ends, state: 'planned' });
const run = (...places: number[]): Run => ({
  ...{ datum: 'zero', length: length(50) },
  marks: places.map((at) => ({ at: exactLength(at), label: '', kind: 'hole' })),
});

test('how far readings move a number: the root of the squares of the further ends, in any order', () => {
  expect(plusMinus(here(100, { a: [97, 101], b: [96, 104] }))).toBe(5);
  expect(plusMinus(here(100, { a: [null, 103] }))).toBe(3);
  expect(plusMinus(here(run(0, 10), { a: [run(0, 8), run(0, 11)] }))).toBe(2);
  expect(plusMinus(here(run(0, 5, 10), { a: [run(0, 4, 7), run(0, 6, 11)] }))).toBe(3);
  expect(plusMinus(here(run(), { a: [run(), run()] }))).toBe(0);
  expect(plusMinus(nothing({ kind: 'undecided' }))).toBe(0);
  const [large, one, two] = [[0, 1e8] as const, [0, 1] as const, [0, 1] as const];
  expect(plusMinus(here(0, { large, one, two }))).toBe(plusMinus(here(0, { one, two, large })));
});

test('the place of a mark is in doubt by rows of as many marks alone', () => {
  const at = (low: Value | null, high: Value | null, rank = 1) =>
    plusMinusAt(here(run(0, 10, 20), { a: [low, high] }), rank);
  expect(at(run(0, 8, 20), run(0, 11, 20))).toBe(2);
  expect(at(run(0, 8, 20), run(0, 11, 20), 0)).toBe(0);
  expect(at(run(0, 8, 20), run(0, 11, 20), 7)).toBe(0);
  for (const other of [null, 5, run(0, 3)]) expect(at(other, run(0, 11, 20))).toBe(1);
  expect(plusMinusAt(here(5, { a: [4, 6] }), 0)).toBe(0);
});

const sum = (values: readonly Value[]) =>
  ({ ok: true, value: values.reduce<number>((a, b) => a + Number(b), 0) }) as const;

test('a number is worked out at both ends of each reading, wherever that comes in', () => {
  const both = [here(100, { a: [98, 102] }), here(50, { a: [49, 51], b: [46, null] })];
  expect(through('k', both, 150, sum)).toEqual({ a: [147, 153], b: [146, null] });
  const none = (values: readonly Value[]) =>
    (values[0] as number) < 100 ? ({ ok: false } as const) : sum(values);
  expect(through('k', both, 150, none)).toEqual({ a: [null, 153], b: [146, null] });
  const never = () => ({ ok: false }) as const;
  expect(through('k', both, 150, never)).toEqual({ a: [null, null], b: [null, null] });
  // What is impossible at one end is in doubt, also of nothing.
  const one = through('k', [here(5, { a: [4, 6] })], 0, ([value]) =>
    value === 4 ? { ok: false } : { ok: true, value: 0 },
  );
  expect(one).toEqual({ a: [null, 0] });
});

test('what moves nothing is not in doubt', () => {
  const by = (low: Value, high: Value, base: Value) =>
    through('k', [here(5, { a: [4, 6] })], base, ([value]) => ({
      ...{ ok: true, value: (value as number) < 5 ? low : high },
    }));
  expect(by(150, 150, 150)).toEqual({});
  expect(by(149.995, 150.005, 150)).toEqual({});
  expect(by(150, 150.02, 150)).toEqual({ a: [150, 150.02] });
  expect(by(149.98, 150, 150)).toEqual({ a: [149.98, 150] });
  expect(by(run(0, 9), run(0, 9), run(0, 9))).toEqual({});
  const moved = [run(0, 9), run(0, 10)] as const;
  expect(by(...moved, run(0, 9))).toEqual({ a: moved });
});

test('of many readings the largest are followed singly, and the rest together', () => {
  const sources = (count: number) =>
    Array.from({ length: count }, (_, i) => here(0, { [`r${i}`]: [-i - 1, i + 1] }));
  expect(Object.keys(through('k', sources(12), 0, sum))).toEqual(
    sources(12).map((_, i) => `r${i}`),
  );
  const more = through('k', sources(13), 0, sum);
  expect(Object.keys(more)).toEqual([
    ...Array.from({ length: 11 }, (_, i) => `r${12 - i}`),
    'rest:k',
  ]);
  expect(more['rest:k']).toEqual([-3, 3]);
  // Of one number they are the root of their squares, as they are everywhere.
  const all = Object.assign({}, ...sources(13).map(({ ends }) => ends)) as Ends;
  const root = Math.sqrt(1 + 4);
  expect(through('k', [here(0, all)], 0, sum)['rest:k']).toEqual([-root, root]);
  // Of some that are as large those that come first.
  const alike = Array.from({ length: 14 }, (_, i) => here(0, { [`r${i}`]: [-1, 1] }));
  expect(Object.keys(through('k', alike, 0, sum))).toEqual([
    ...Array.from({ length: 11 }, (_, i) => `r${i}`),
    'rest:k',
  ]);
  // How large one is it is where it is largest.
  const twice = [here(0, { r0: [-99, 99] }), ...sources(13)];
  expect(Object.keys(through('k', twice, 0, sum)).slice(0, 2)).toEqual(['r0', 'r12']);
  // Of a row that is taken the ends aren't moved together.
  const row = [here(run(0, 9), { r0: [run(0, 9.5), run(0, 10)] }), ...sources(13).slice(1)];
  const first = through('k', row, 2, ([one]) => ({ ok: true, value: (one as Run).marks.length }));
  expect(first).not.toHaveProperty('rest:k');
});

test.each([
  [2000, 2],
  [500, 4],
  [1, 12],
])('with a row of %i marks so many as %i are worked out at their ends', (marks, room) => {
  const base = run(...Array.from({ length: marks }, (_, i) => i));
  const away = run(7);
  const ends = (count: number) => {
    const sources = Array.from({ length: count }, (_, i) => here(0, { [`r${i}`]: [-1, 1] }));
    return Object.keys(through('k', sources, base, () => ({ ok: true, value: away })));
  };
  expect(ends(room)).toHaveLength(room);
  expect(ends(room)).not.toContain('rest:k');
  expect(ends(room + 1)).toHaveLength(room);
  expect(ends(room + 1)).toContain('rest:k');
});

test('what was read is kept in a few letters: the same whatever stands first, and in every version', () => {
  /** FNV-1a of 32 bits, in whole numbers of any size; its constants from memory. */
  const second = (text: string) => {
    let sum = 2166136261n;
    for (const one of text) sum = ((sum ^ BigInt(one.charCodeAt(0))) * 16777619n) % 2n ** 32n;
    return sum.toString(36);
  };
  const given = (fields: object, takes: object = {}, made: object = {}) =>
    readDigest({ fields, takes, made, count: undefined } as never);
  expect(given({ depth: 16000, by: 'rule' }, { row: 3 }, { cut: 5 })).toBe(
    second('[[["by","rule"],["depth",16000]],[["row",3]],[["cut",5]]]'),
  );
  expect(given({ by: 'rule', depth: 16000, a: 1 })).toBe(given({ a: 1, depth: 16000, by: 'rule' }));
  const others = [given({}), given({ a: 1 }), given({}, { a: 1 }), given({}, {}, { a: 1 })];
  expect(new Set(others).size).toBe(4);
});

const A = letterOf(0);
const B = letterOf(1);

test('text of another unit than the first gets its own written, but for a factor beside a link', () => {
  const text = (...parts: readonly unknown[]) => fieldText(parts).text;
  const front = quantity('front');
  const [one] = typed('1 + ');
  const mm = (said: string) => typed(said, 'mm')[0];
  expect(text(one, mm('3 − 2'))).toBe('1 + 3 mm − 2 mm');
  expect(text(one, front, mm(' × 3 + 5'))).toBe(`1 + ${A} × 3 + 5 mm`);
  expect(text(one, front, mm('× 3'))).toBe(`1 + ${A}× 3`);
  expect(text(one, mm('5 + 3 × '), front)).toBe(`1 + 5 mm + 3 × ${A}`);
  expect(text(one, mm('3 ×'), front, mm(' ÷ 2'))).toBe(`1 + 3 ×${A} ÷ 2`);
  expect(text(...typed('1', 'in'), ...typed(' + 2'))).toBe('1 + 2 cm');
});

test('a place of a text is in the part it stands in, and a letter is one of what is taken', () => {
  const field = fieldText([...typed('1 + '), quantity('front'), ...typed(' + 2')]);
  expect(field.starts).toEqual([0, 4, 5]);
  expect([0, 3, 4, 5, 99].map((at) => partAt(field, at))).toEqual([0, 0, 1, 2, 2]);
  expect(partAt(fieldText(undefined), 3)).toBe(0);
  expect([A, B, `${A}1`, '1', ''].map((one) => isLetter(one, field))).toEqual([
    ...[true, false, false, false, false],
  ]);
});

test.each<[unknown, boolean]>([
  [{ text: '1', unit: 'cm', mark: ',' }, true],
  [{ text: '1', unit: 'cm', mark: '.' }, true],
  [{ text: '1', unit: 'cm', mark: ';' }, false],
  [{ text: 1, unit: 'cm' }, false],
  [{ text: '1', unit: 'ell' }, false],
  [{ text: '1' }, false],
  [{ put: 1.5, kind: 'length' }, true],
  [{ put: 1.5, kind: 'length', plusMinus: 0 }, true],
  [{ put: 1.5, kind: 'length', plusMinus: -1 }, false],
  [{ put: 1.5, kind: 'length', plusMinus: '1' }, false],
  [{ put: '1', kind: 'length' }, false],
  [{ put: 1, kind: 'ell' }, false],
  [{ put: run(0, 1), kind: 'run' }, true],
  [{ put: run(0, 1), kind: 'length' }, false],
  [{ put: 1, kind: 'run' }, false],
  [{ link: { quantity: 'a' } }, true],
  [{ link: { work: 'a', output: 'b' } }, true],
  [{ link: { work: 'a', output: 'b', of: 'left' } }, true],
  [{ link: { work: 'a', output: 'b', of: 1 } }, false],
  [{ link: { work: 'a' } }, false],
])('the part %o of a field is one: %s', (part, good) => {
  expect(fieldText([part]).trouble).toBe(good ? undefined : 'damaged');
  expect(fieldText(part)).toMatchObject({ trouble: 'damaged', text: '', taken: [] });
});
