import { describe, expect, test } from 'vitest';
import { exactLength, type Length, LONGEST, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type StripsInput, stripsFor } from '../../../src/sewing/cloth/strips.ts';
import { gathers } from '../../../src/sewing/fullness/gathers.ts';
import type { Fullness, GathersInput } from '../../../src/sewing/fullness/gathers-input.ts';
import type { PleatsInput } from '../../../src/sewing/fullness/pleat-input.ts';
import { pleatsInStrip, type StripToPleat } from '../../../src/sewing/fullness/pleat-strip.ts';
import { cameOut, pleats } from '../../../src/sewing/fullness/pleats.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Arithmetic worked here, no source: a knife pleat takes two depths, a box or inverted one four.

const FINE: PleatsInput = {
  kind: 'knife',
  finished: mm(600),
  rule: { by: 'count', count: 5 },
  depth: mm(40),
  ends: 'fold',
  flat: ZERO,
  seam: ZERO,
};
const at = (set: Partial<PleatsInput>) => pleats({ ...FINE, ...set });
const plan = (set: Partial<PleatsInput>) => solved(at(set));
const count = (of: number) => ({ by: 'count', count: of }) as const;

describe('pleats', () => {
  test('five boxes of 80 over 600 leave 40 between; of the others there is no box', () => {
    const { box, layers, past } = plan({ kind: 'box' });
    expect([toMm(box?.face ?? ZERO), toMm(box?.between ?? ZERO)]).toEqual([80, 40]);
    expect([layers, past]).toEqual([undefined, undefined]);
    expect([plan({}).box, plan({ kind: 'inverted' }).box]).toEqual([undefined, undefined]);
    expect(plan({ kind: 'inverted' }).layers).toBeUndefined();
    // Knife pleats alone begin past their seam: 200 deep, 120 from it.
    expect(toMm(plan({ depth: mm(200) }).past ?? ZERO)).toBe(80);
    expect(plan({ kind: 'inverted', depth: mm(200) }).past).toBeUndefined();
  });

  test('a box as wide as its room, and no wider; its front, or the depth that makes it', () => {
    const depth = (of: number) => at({ kind: 'box', depth: of as Length });
    expect(boundTold(depth, mm(70), 'depth', 'most')).toBe(mm(60));
    const face = (of: number) => at({ kind: 'box', face: of as Length });
    expect(boundTold(face, mm(130), 'face', 'most')).toBe(mm(120));
    expect(plan({ kind: 'box', depth: mm(60) }).box?.between).toBe(0);
  });

  test('beside 300 there is one fewer, beside 299 both', () => {
    const beside = (of: number) => plan({ rule: count(of) }).beside.map((one) => one.count);
    expect([beside(300), beside(299), beside(1)]).toEqual([[299], [298, 300], [2]]);
  });

  test('so narrow that just 300 fill the width, and no narrower', () => {
    const width = (of: number) => at({ rule: { by: 'width', width: of as Length } });
    expect(boundTold(width, mm(1), 'width', 'least')).toBe(mm(2));
  });

  test('a strip cut at another length comes out as much wider, its flat part with it', () => {
    const input = { ...FINE, flat: mm(50), seam: mm(10) };
    const { cut } = solved(pleats(input));
    expect(toMm(cut)).toBe(600 + 5 * 80 + 20);
    expect(toMm(solved(cameOut(cut, input)))).toBe(600);
    expect(toMm(solved(cameOut(exactLength(cut + mm(30)), input)))).toBe(630);
    // 400 in the folds and 50 flat: with its seams a strip of 470 has nothing over.
    expect(cameOut(mm(470), input)).toMatchObject({
      problems: [{ kind: 'does-not-fit', field: 'depth', room: mm(450), needed: mm(450) }],
    });
    expect(toMm(solved(cameOut(mm(471), input)))).toBe(51);
    expect(fieldsOf(cameOut(mm(471), { ...input, depth: ZERO }))).toEqual(['depth']);
  });
});

describe('pleats that a strip gives', () => {
  const STRIP: StripToPleat = {
    ...{ kind: 'knife', depth: mm(40), ends: 'fold', flat: mm(30), seam: mm(10) },
    ...{ there: mm(1000), width: mm(50) },
  };

  test('as long as one takes: 50 of ends, 80 folded and 50 wide; begun, so many', () => {
    const there = (begun?: number) => (of: number) =>
      pleatsInStrip({ ...STRIP, there: of as Length }, begun);
    expect(boundTold(there(), mm(100), 'there', 'least')).toBe(mm(180));
    expect(boundTold(there(3), mm(100), 'there', 'least')).toBe(mm(340));
  });

  test('300 of them and no more', () => {
    const there = (of: number) => pleatsInStrip({ ...STRIP, there: of as Length });
    const most = boundTold(there, mm(50_000), 'there', 'most');
    expect(most).toBe(mm(50 + 301 * 130) - 1);
    expect(solved(there(most)).rule).toEqual(count(300));
  });
});

describe('gathers: what a refusal says will do does', () => {
  const FRILL: GathersInput = {
    ...{ edge: mm(1000), flat: mm(100), full: { by: 'ratio', ratio: 2 } },
    ...{ ring: false, ends: mm(10), parts: 4 },
  };
  const frill = (set: Partial<GathersInput>) => gathers({ ...FRILL, ...set });

  test('a strip of 900 flat and ends of 20, to twenty times that', () => {
    const strip = (of: number) => frill({ full: { by: 'strip', strip: of as Length } });
    expect(boundTold(strip, mm(500), 'strip', 'least')).toBe(mm(900 + 100 + 20));
    expect(boundTold(strip, mm(50_000), 'strip', 'most')).toBe(mm(20 * 900 + 100 + 20));
  });

  test('a sample no shorter than what it is gathered to, nor over twenty times as long', () => {
    const flat = (of: number) =>
      frill({ full: { by: 'sample', flat: of as Length, gathered: mm(50) } });
    expect(boundTold(flat, mm(40), 'sampleFlat', 'least')).toBe(mm(50));
    expect(boundTold(flat, mm(2000), 'sampleFlat', 'most')).toBe(mm(1000));
    const none = { by: 'sample', flat: ZERO, gathered: ZERO } as const;
    expect(fieldsOf(frill({ full: none }))).toEqual(['sampleFlat', 'sampleGathered']);
  });

  test('an edge whose strip is just a kilometre, however its fullness is told', () => {
    const twice: Fullness[] = [
      { by: 'ratio', ratio: 2 },
      { by: 'part', part: 0.5 },
      { by: 'sample', flat: mm(100), gathered: mm(50) },
    ];
    for (const full of twice) {
      const edge = (of: number) => frill({ edge: of as Length, full });
      // 100 flat, and the rest twice.
      expect(boundTold(edge, LONGEST, 'edge', 'most')).toBe((LONGEST + mm(100)) / 2);
    }
  });

  test('from as wide to twenty times as full', () => {
    const ratio = (of: number) => frill({ full: { by: 'ratio', ratio: of } });
    expect(boundTold(ratio, 30, 'ratio', 'most')).toBe(20);
    expect(boundTold(ratio, 0, 'ratio', 'least')).toBe(1);
  });
});

describe('cloth for strips', () => {
  const cloth = (set: Partial<StripsInput>) => (of: number) =>
    stripsFor({ needed: mm(5000), cloth: of as Length, seam: mm(10), ...set });

  test('is wide enough for 500 of them, beside their seams', () => {
    expect(boundTold(cloth({}), mm(15), 'cloth', 'least')).toBe(mm(20 + 10));
    // Ends of 30 are 40 more to make; a ring has none.
    expect(boundTold(cloth({ ends: mm(30) }), mm(25), 'cloth', 'least') / mm(1)).toBeCloseTo(
      20 + 5040 / 500,
      9,
    );
    expect(boundTold(cloth({ ends: mm(30), ring: true }), mm(15), 'cloth', 'least')).toBe(mm(30));
    expect(solved(cloth({})(mm(30))).count).toBe(500);
  });

  test('has something beside its seams, however little is needed', () => {
    const little = { needed: mm(1), ends: ZERO };
    expect(Math.ceil(boundTold(cloth(little), mm(15), 'cloth', 'least'))).toBe(mm(20) + 1);
  });
});
