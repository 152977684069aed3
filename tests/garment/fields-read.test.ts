import { describe, expect, test } from 'vitest';
import { begin } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_LINKS } from '../../src/garment/record/limits.ts';
import type { Part, Quantity } from '../../src/garment/record/record.ts';
import { fieldText } from '../../src/garment/work-out/field-text.ts';
import { oneOf } from '../../src/garment/work-out/field-value.ts';
import { nodeField, readingTrouble } from '../../src/garment/work-out/node-field.ts';
import { QUANTITY_SPECS } from '../../src/garment/work-out/quantity-node.ts';
import { mm } from '../../src/lengths/length.ts';
import { letterOf } from '../../src/lengths/taken.ts';
import type { Run } from '../../src/sewing/run.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const [one = { text: '', unit: 'cm' }] = typed('1 + ');
const plus = typed(' + ')[0] as Part;
const times = typed(' × ')[0] as Part;
const run = (...places: number[]): Run => ({
  ...{ datum: 'zero', length: mm(500) },
  marks: places.map((at) => ({ at: mm(at), label: '', kind: 'hole' })),
});
const put = (value: unknown, kind: string, more: object = {}) =>
  ({ put: value, kind, was: { quantity: 'gone' }, ...more }) as Part;

/** Invented: strips of two sides that are cut alike and holed alike, and two that aren’t. */
const strips = (more: object = {}) => ({
  ...{ name: 'Strip', calculation: 'toy-strip', rank: 3, sides: ['left', 'right'] },
  fields: { length: typed('20'), pitch: typed('5'), end: typed('5') },
  ...more,
});

function numberOf(parts: unknown, kind: Quantity['kind'] = 'length', more: object = {}) {
  const q = (its: unknown, of: string) => ({ name: 'n', kind: of, rank: 1, parts: its });
  const quantities = {
    asked: { ...q(parts, kind), ...more },
    long: q(typed('60'), 'length'),
    seven: q(typed('7'), 'count'),
    empty: q(typed(''), 'length'),
    behind: q([quantity('empty')], 'length'),
  };
  const odd = strips({ own: { right: { length: typed('21') } } });
  const { answer } = begin(garmentOf({ quantities, works: { strips: strips(), odd } }), KNOWN);
  const result = answer.values.get(homeOf('asked'));
  return result?.ok ? { value: result.value, ends: result.ends } : result?.trouble;
}

describe('why a field has no number', () => {
  const field = 'value';
  const links = (count: number) =>
    Array.from({ length: 2 * count - 1 }, (_, i) => (i % 2 === 0 ? quantity('long') : plus));

  test.each<[string, unknown, Quantity['kind'], unknown]>([
    ['damaged', [7], 'length', { kind: 'damaged', field }],
    ['of too many links', links(MOST_LINKS + 1), 'length', { kind: 'too many links', field }],
    ['empty', typed(''), 'length', { kind: 'not given', field }],
    ['without anything', undefined, 'length', { kind: 'not given', field }],
    ['without a part', [], 'length', { kind: 'not given', field }],
    ['not understood', typed('6q'), 'length', { kind: 'reading', field, part: 0 }],
    [
      'not understood behind a link',
      [quantity('long'), ...typed(' + q')],
      'length',
      { kind: 'reading', field, part: 1 },
    ],
    [
      'half typed before a link',
      [...typed('2 × ('), quantity('long')],
      'length',
      { kind: 'reading', field },
    ],
    ['a length for a count', typed('7 cm'), 'count', { kind: 'kinds', field, part: 0 }],
    ['a length taken for a count', [quantity('long')], 'count', { kind: 'kinds', field, part: 0 }],
    [
      'a row in a sum',
      [one, output('strips', 'holes')],
      'length',
      { kind: 'kinds', field, part: 1 },
    ],
    [
      'a total of what doesn’t add up',
      [one, output('strips', 'last', 'total')],
      'length',
      { kind: 'kinds', field, part: 1 },
    ],
    [
      'sides that differ',
      [one, output('odd', 'cut')],
      'length',
      { kind: 'sides differ', field, part: 1 },
    ],
    ['rows that differ', [output('odd', 'holes')], 'run', { kind: 'sides differ', field, part: 0 }],
    [
      'a link to one that is empty',
      [one, quantity('empty')],
      'length',
      { kind: 'waits', field, for: 'empty||', root: 'empty||' },
    ],
    [
      'a link to one that waits',
      [one, quantity('behind')],
      'length',
      { kind: 'waits', field, for: 'behind||', root: 'empty||' },
    ],
    [
      'a link to one that is gone',
      [one, quantity('gone')],
      'length',
      { kind: 'waits', field, for: 'gone||', root: 'gone||', gone: { why: 'gone' } },
    ],
    [
      'a count in a sum of lengths',
      [quantity('long'), plus, quantity('seven')],
      'length',
      { kind: 'kinds', field, part: 2 },
    ],
    [
      'one that begins it',
      [quantity('seven'), plus, quantity('long')],
      'length',
      { kind: 'kinds', field, part: 0 },
    ],
    [
      'one beside a factor',
      [quantity('seven'), times, quantity('long'), plus, quantity('seven')],
      'length',
      { kind: 'kinds', field, part: 4 },
    ],
    [
      'a count divided by a length',
      [quantity('seven'), ...typed(' ÷ '), quantity('long')],
      'number',
      { kind: 'reading', field, fault: { kind: 'divide-by-length' } },
    ],
    [
      'one in a list of lengths',
      [...typed('1; '), quantity('seven')],
      'run',
      { kind: 'kinds', field, part: 1 },
    ],
  ])('%s', (_, parts, kind, trouble) => {
    expect(numberOf(parts, kind)).toMatchObject(trouble as object);
  });

  test('a text takes no number, and a choice none that it hasn’t', () => {
    const text = fieldText([...typed('0 1 front; '), quantity('long')]);
    const readOf = () => () => ({ ok: true, value: '' }) as const;
    const places = { quantities: new Map(), works: new Map() };
    const site = { side: '', owner: 'a', places, read: new Map() };
    expect(nodeField('own', text, { kind: 'text', readOf }, site)).toMatchObject({
      trouble: { kind: 'kinds', field: 'own', part: 1 },
    });
    expect(readingTrouble('style', text, 'unknown option')).toEqual({
      kind: 'damaged',
      field: 'style',
    });
  });
});

describe('what a field comes to', () => {
  const comesTo = (parts: unknown, kind?: Quantity['kind']) => {
    const found = numberOf(parts, kind);
    return found && 'value' in found ? found.value : found;
  };
  const places = (parts: unknown) => {
    const found = comesTo(parts, 'run');
    return (
      found && typeof found === 'object' && 'marks' in found && found.marks.map(({ at }) => at)
    );
  };

  test('counts are factors of lengths, and numbers of counts', () => {
    expect(comesTo([quantity('seven'), times, quantity('long')])).toBe(mm(4200));
    expect(comesTo([quantity('long'), ...typed(' ÷ '), quantity('seven')])).toBe(
      Math.round(mm(600) / 7),
    );
    expect(comesTo([quantity('seven'), plus, ...typed('1')], 'count')).toBe(8);
    expect(comesTo([quantity('seven'), ...typed(' ÷ 2')], 'number')).toBe(3.5);
    expect(comesTo([...typed('3 × '), quantity('seven')], 'count')).toBe(21);
    expect(
      comesTo([
        ...Array(MOST_LINKS - 1)
          .fill([quantity('long'), plus])
          .flat(),
        quantity('long'),
      ]),
    ).toBe(MOST_LINKS * mm(600));
  });

  test('sides that are alike are one, as rows are, and a total is all of them', () => {
    expect(comesTo([output('strips', 'cut')])).toBe(mm(200));
    expect(places([output('strips', 'holes')])).toEqual([50, 100, 150].map((at) => mm(at)));
    expect(comesTo([output('strips', 'cut', 'total'), plus, output('strips', 'cut')])).toBe(
      mm(600),
    );
    expect(comesTo([output('odd', 'cut', 'total'), plus, output('strips', 'cut')])).toBe(mm(610));
    expect(comesTo([output('strips', 'cut'), ...typed(' + 1')])).toBe(mm(210));
    expect(places([...typed('1; '), output('strips', 'cut')])).toEqual([mm(10), mm(200)]);
  });

  test('what dividing leaves between two sides is no difference, and a hundredth of a unit is', () => {
    const all = { kind: 'length', keys: ['a', 'b'], total: false } as const;
    const of = (...values: number[]) => oneOf(all, values, values);
    expect(of(300, 300.009)).toBe(300);
    expect(of(300.009, 300)).toBe(300.009);
    expect(of(300, 300.02)).toBeUndefined();
    expect(of(300, 300, 301)).toBeUndefined();
    expect(oneOf(all, [run(5), run(5)], [run(5), run(5)])).toEqual(run(5));
    expect(oneOf(all, [run(5), run(6)], [run(5), run(6)])).toBeUndefined();
    // One of them is moved to the end of its reading, and takes the others along.
    expect(oneOf(all, [300, 310], [300, 300])).toBe(310);
    expect(oneOf(all, [290, 300], [300, 300])).toBe(290);
  });

  test('each field of a work by what it takes itself', () => {
    const back = {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 4 },
      fields: { length: [quantity('long')], bottom: [output('strips', 'cut')] },
    };
    const long = { name: 'n', kind: 'length', rank: 1, parts: typed('60') };
    const record = garmentOf({ quantities: { long }, works: { strips: strips(), back } });
    const result = begin(record, KNOWN).answer.values.get(homeOf('back', '', 'cut-length'));
    expect(result).toMatchObject({ ok: true, value: mm(800) });
  });

  test('what was put in a link’s place is in doubt by as much as it was, a row by nothing', () => {
    const sure = put(mm(200), 'length', { plusMinus: 80 });
    expect(numberOf([sure, plus, quantity('long')])).toEqual({
      ...{ value: mm(800), ends: { 'p:asked:value:0': [mm(800) - 80, mm(800) + 80] } },
    });
    expect(numberOf([put(mm(200), 'length')])).toEqual({ value: mm(200), ends: {} });
    const row = run(5, 9);
    expect(numberOf([put(row, 'run', { plusMinus: 80 })], 'run')).toEqual({ value: row, ends: {} });
    const list = numberOf(typed('1; 2'), 'run', { plusMinus: 80 });
    expect(list && 'ends' in list && list.ends).toEqual({});
  });

  test('what is sure takes nobody’s place among the readings that are followed', () => {
    const unsure = Array.from({ length: 12 }, () => [
      put(mm(10), 'length', { plusMinus: 80 }),
      plus,
    ]);
    const found = numberOf([...unsure.flat(), put(mm(10), 'length')]);
    expect(found && 'ends' in found && Object.keys(found.ends)).toHaveLength(12);
    expect(found && 'ends' in found && found.ends).not.toHaveProperty('rest:asked||');
  });

  test('a length that was read means what it meant, or has no doubt', () => {
    // “46-5/16” is one number, and a letter in the place of its fraction would be taken from it.
    const whole = numberOf(typed('46-5/16 ± 0.125 in', 'in'));
    expect(whole).toEqual({ value: mm(25.4) * 46.3125, ends: {} });
    const beside = [quantity('long'), ...typed(' + 46-5/16 ± 0.125 in', 'in')];
    expect(numberOf(beside)).toEqual({ value: mm(600) + mm(25.4) * 46.3125, ends: {} });
    expect(numberOf(typed('46 5/16 ± 0.125 in', 'in'))).toMatchObject({
      ends: { 'r:asked:value:0': [mm(25.4) * 46.1875, mm(25.4) * 46.4375] },
    });
    const read = fieldText([...typed('48.7 ± 0.2 cm + 1')]);
    const field = (sure: boolean) =>
      nodeField(
        'value',
        read,
        {
          kind: 'length',
          readOf:
            ({ text }) =>
            (how) =>
              QUANTITY_SPECS.length.read(text, how),
        },
        {
          ...{ side: '', owner: 'a', sure, read: new Map() },
          places: { quantities: new Map(), works: new Map() },
        },
      );
    expect(field(true)).toMatchObject({ value: mm(497), sources: [] });
    expect(field(false)).toMatchObject({
      text: { text: `${letterOf(0)} + 1` },
      sources: [
        {
          ...{ kind: 'length', keys: [], total: false },
          put: { value: mm(487), plusMinus: mm(2), reading: 'r:a:value:0' },
        },
      ],
    });
  });
});
