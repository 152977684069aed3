import { describe, expect, test } from 'vitest';
import { type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type CasingInput, casing } from '../../../src/sewing/fullness/casing.ts';
import { type ElasticInput, elastic } from '../../../src/sewing/fullness/elastic.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Worked here by arithmetic, no source.

const WAIST: ElasticInput = { girth: mm(840), how: { by: 'percent', percent: 5 }, lap: ZERO };
const at = (set: Partial<ElasticInput>) => elastic({ ...WAIST, ...set });
const plan = (set: Partial<ElasticInput>) => solved(at(set));
const sample = (flat: number, worn: number, most?: number) => ({
  ...({ by: 'sample', flat: mm(flat), worn: mm(worn) } as const),
  most: most === undefined ? undefined : mm(most),
});

describe('examples', () => {
  test('stretched by 5 per cent 80 cm hold 84, and a lap of 2 is cut more', () => {
    const { ring, cut, worn } = plan({ lap: mm(20) });
    expect([toMm(ring), toMm(cut), worn]).toEqual([800, 820, 0.05]);
    expect(toMm(plan({ how: { by: 'percent', percent: 300 } }).ring)).toBe(210);
  });

  test('a casing of 126 on 84 is half as full again; where none is given nothing is told', () => {
    expect(plan({ round: mm(1260) }).fullness).toBe(1.5);
    expect(plan({}).fullness).toBeUndefined();
  });

  test('the shortest that passes only where it is known how far it goes, and what it passes', () => {
    expect(toMm(plan({ how: sample(200, 210, 400), pass: mm(1000) }).least ?? ZERO)).toBe(500);
    expect(plan({ how: sample(200, 210), pass: mm(1000) }).least).toBeUndefined();
    expect(plan({ how: sample(200, 210, 400) }).least).toBeUndefined();
    expect(plan({ pass: mm(1000) }).least).toBeUndefined();
  });
});

describe('what a refusal says will do does', () => {
  test('a piece that is there: more than its lap, less than the body with it', () => {
    const there = (of: number) => at({ how: { by: 'there', there: of as Length }, lap: mm(20) });
    expect(boundTold(there, mm(10), 'there', 'over')).toBe(mm(20));
    expect(boundTold(there, mm(900), 'there', 'under')).toBe(mm(860));
  });

  test('a casing as wide round as what it passes, and each of both alone', () => {
    const round = (of: number) => at({ round: of as Length, pass: mm(1000) });
    expect(boundTold(round, mm(900), 'round', 'least')).toBe(mm(1000));
    expect([at({ round: mm(1) }).ok, at({ pass: mm(5000) }).ok]).toEqual([true, true]);
    expect(fieldsOf(at({ girth: ZERO, round: mm(1), pass: mm(2) }))).toEqual(['girth']);
  });

  test('from more than nothing to 300 per cent', () => {
    const percent = (of: number) => at({ how: { by: 'percent', percent: of } });
    expect(boundTold(percent, 400, 'percent', 'most')).toBe(300);
    expect(boundTold(percent, 0, 'percent', 'least')).toBe(1);
  });

  test('of a sample: worn more than flat, at its most no less than worn', () => {
    const worn = (of: number) => at({ how: { ...sample(200, 1), worn: of as Length } });
    expect(boundTold(worn, mm(100), 'sampleWorn', 'over')).toBe(mm(200));
    const most = (of: number) => at({ how: { ...sample(200, 210), most: of as Length } });
    expect(boundTold(most, mm(205), 'sampleMost', 'least')).toBe(mm(210));
    expect(fieldsOf(at({ how: sample(0, 0) }))).toEqual(['sampleFlat', 'sampleWorn']);
  });

  test('a casing with as much ease as its elastic is thick', () => {
    const of = (set: Partial<CasingInput>) =>
      casing({
        ...{ width: mm(20), thick: mm(2), ease: mm(3), turn: ZERO, edge: ZERO, header: ZERO },
        ...set,
      });
    expect(boundTold((ease) => of({ ease: ease as Length }), mm(1), 'ease', 'least')).toBe(mm(2));
    expect(fieldsOf(of({ width: ZERO, ease: ZERO }))).toEqual(['width']);
  });

  test('by the rule a girth of more than 2 in', () => {
    const girth = (of: number) => at({ girth: of as Length, how: { by: 'rule' } });
    expect(boundTold(girth, mm(40), 'girth', 'over')).toBe(mm(50.8));
  });
});
