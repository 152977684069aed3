/**
 * Rows 3.8, 17.9 to 17.14 of the check values, each with its source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactLength,
  inches,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import { type BindingInput, bindingWidth, seamLeft } from '../../../src/sewing/hems/binding.ts';
import {
  type BoundEdge,
  bindingLength,
  cornerTakes,
} from '../../../src/sewing/hems/binding-length.ts';
import { CORD_PLUS, CORD_TIMES } from '../../../src/sewing/sources/binding.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cut = (input: Omit<BindingInput, 'thickness'>, thickness = ZERO) =>
  solved(bindingWidth({ ...input, thickness })).cut;

describe('width', () => {
  test('17.9, 17.10 (common practice, no source): 10 mm single is cut 40, double 60', () => {
    expect(cut({ finish: 'single', width: mm(10) })).toBe(mm(40));
    expect(cut({ finish: 'double', width: mm(10) })).toBe(mm(60));
  });

  test('thickness, derived: an edge of 1 mm and a strip of 0.3 take 0.53 mm more', () => {
    const { thick } = solved(
      bindingWidth({ finish: 'single', width: mm(10), thickness: mm(0.3), edgeThick: mm(1) }),
    );
    expect(toMm(thick).toFixed(2)).toBe('0.53');
    const gap = 1.6;
    const double = solved(
      bindingWidth({ finish: 'double', width: mm(10), thickness: mm(0.3), edgeThick: mm(1) }),
    ).thick;
    const fold = (g: number, t: number) => (Math.PI / 2) * (g + t) - g - 2 * t;
    expect(toMm(double)).toBeCloseTo(2 * (fold(gap, 0.6) + fold(0, 0.6)) + fold(0, 0.3), 6);
  });

  test('thick cloth round a thin edge takes no less than the rule', () => {
    const input = { finish: 'single', width: mm(10), thickness: mm(2), edgeThick: ZERO } as const;
    expect(solved(bindingWidth(input))).toMatchObject({ cut: mm(40), rule: mm(40) });
  });

  // L. I. Baldt, Clothing for Women, 1916, Constructive Processes 4: twice the depth and 1/2 in.
  test('17.11: a band of 2 in is cut 4 1/2', () => {
    expect(toInches(cut({ finish: 'band', width: inches(2) }))).toBe(4.5);
  });

  // wikisum.wiki, French seam: 5/8 in takes a strip of 7/8.
  test('3.8: a bound seam of 5/8 in takes 7/8', () => {
    expect(toInches(cut({ finish: 'seam', seam: inches(5 / 8) }))).toBe(7 / 8);
  });

  test('17.12, derived: a cord of 6 mm with 15 of seam: 48.8', () => {
    expect(toMm(cut({ finish: 'cord', cord: mm(6), seam: mm(15) })).toFixed(1)).toBe('48.8');
  });

  // blog.fabric.com, 2012: a cord of 1/4 in takes 2 in, eight times.
  test('17.13: eight cords of 1/4 in leave 15.4 mm for each seam', () => {
    const cord = inches(1 / 4);
    const rule = exactLength(CORD_TIMES.value * cord);
    expect([toInches(rule), toMm(seamLeft(rule, cord, ZERO)).toFixed(1)]).toEqual([2, '15.4']);
  });

  // docslib.org/doc/11691304: 1 3/4 in for 5/32 in of cord; at least 1 1/2 in more than it.
  test('17.14: 1 3/4 in round 5/32 leave 16 mm each; ours with 3/4 in seams 50.6 mm', () => {
    const cord = inches(5 / 32);
    expect(toMm(seamLeft(inches(7 / 4), cord, ZERO)).toFixed(0)).toBe('16');
    expect(toMm(cut({ finish: 'cord', cord, seam: inches(3 / 4) })).toFixed(1)).toBe('50.6');
    expect(cord + CORD_PLUS.value).toBeLessThan(inches(7 / 4));
  });

  test('flat piping: twice what shows and its seam', () => {
    expect(cut({ finish: 'flat', width: mm(3), seam: mm(15) })).toBe(mm(36));
  });
});

const edge: BoundEdge = {
  straight: [],
  ...{ outLong: [], outRadius: [], inLong: [], inRadius: [], corners: [] },
  ...{ inside: mm(10), join: undefined, endTurn: ZERO },
};
const long = (set: Partial<BoundEdge>) => solved(bindingLength({ ...edge, ...set }));

describe('length', () => {
  test('a placemat of 45 × 30 cm, four square corners, joined: its round, 2b a corner, the join', () => {
    const sides = [450, 300, 450, 300].map(mm);
    const found = long({ straight: sides, corners: [90, 90, 90, 90], join: mm(6) });
    expect(found.corners.map((one) => Math.round(toMm(one)))).toEqual([20, 20, 20, 20]);
    expect(toMm(found.long)).toBeCloseTo(1500 + 80 + 2 * Math.SQRT2 * 6, 3);
  });

  test('a circle of 20 cm: its edge outward; inward the stitch line', () => {
    const round = Math.round(2 * Math.PI * 100 * 8000);
    const out = long({ outLong: [length(round)], outRadius: [mm(100)] });
    expect(toMm(out.long)).toBeCloseTo(2 * Math.PI * 100, 3);
    expect(out.stretch).toBeCloseTo(10 / 90, 9);
    const hole = long({ inLong: [length(round)], inRadius: [mm(100)] });
    expect(toMm(hole.long)).toBeCloseTo(2 * Math.PI * 110, 3);
    expect(hole.ease).toBeCloseTo(10 / 110, 9);
  });

  test('law: a corner takes what its edge line is longer than its stitch line, or shorter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 350 }),
        fc.integer({ min: 800, max: 400_000 }),
        (angle, inside) => {
          // Edges a length on both sides of the corner; the stitch lines meet on the bisector.
          const half = (angle * Math.PI) / 360;
          const short = Math.abs(inside / Math.tan(half));
          expect(cornerTakes(angle, exactLength(inside))).toBeCloseTo(2 * short, 0);
        },
      ),
      { seed: 2701 },
    );
    expect(cornerTakes(180, mm(10))).toBe(0);
    expect(cornerTakes(270, mm(10))).toBe(cornerTakes(90, mm(10)));
  });

  test('laws: parts in one or in many, all of it larger, and never shorter than its edge', () => {
    const some = fc.integer({ min: 8000, max: 8_000_000 }).map(length);
    const list = fc.array(some, { maxLength: 4 });
    const angles = fc.array(fc.integer({ min: 1, max: 359 }), { maxLength: 4 });
    fc.assert(
      fc.property(list, list, list, angles, some, (straight, outLong, inLong, corners, radius) => {
        const inside = length(Math.floor(radius / 2));
        const radii = (of: readonly unknown[]) => of.map(() => radius);
        const set = { straight, outLong, inLong, corners, inside };
        const one = long({ ...set, outRadius: radii(outLong), inRadius: radii(inLong) });
        const bare = [...straight, ...outLong, ...inLong].reduce((sum, part) => sum + part, 0);
        expect(one.long).toBeGreaterThanOrEqual(bare - 1e-3);
        const halves = straight.flatMap((part) => [length(part - 1), length(1)]);
        const split = long({
          ...{ ...set, straight: halves },
          ...{ outRadius: radii(outLong), inRadius: radii(inLong) },
        });
        expect(split.long).toBeCloseTo(one.long, 1);
        const twice = (of: readonly number[]) => of.map((part) => length(2 * part));
        const larger = long({
          ...{ straight: twice(straight), outLong: twice(outLong), inLong: twice(inLong) },
          ...{ corners, inside: length(2 * inside) },
          ...{ outRadius: twice(radii(outLong)), inRadius: twice(radii(inLong)) },
        });
        expect(larger.long / 2).toBeCloseTo(one.long, 1);
      }),
      { seed: 2702 },
    );
  });
});

test('what is wrong names its field', () => {
  const width = (set: Partial<BindingInput>) =>
    fieldsOf(bindingWidth({ finish: 'single', width: mm(10), thickness: ZERO, ...set }));
  expect(width({ width: ZERO, thickness: mm(-1) })).toEqual(['width', 'thickness']);
  expect(width({ finish: 'cord' })).toEqual(['seam', 'cord']);
  const wrong = (set: Partial<BoundEdge>) => fieldsOf(bindingLength({ ...edge, ...set }));
  expect(wrong({ straight: [ZERO], corners: [0, 90] })).toEqual(['straight', 'corners']);
  expect(wrong({ corners: [360] })).toEqual(['corners']);
  expect(wrong({ outLong: [mm(10)] })).toEqual(['outRadius']);
  expect(wrong({ outLong: [mm(10)], outRadius: [mm(10)] })).toEqual(['outRadius']);
  expect(wrong({ inRadius: [mm(10)] })).toEqual(['inRadius']);
  expect(wrong({ join: mm(-1) })).toEqual(['join']);
});

describe('worked here: a strip of cloth 1 mm thick', () => {
  const width = (input: Omit<BindingInput, 'thickness'>) =>
    solved(bindingWidth({ ...input, thickness: mm(1) }));

  test('what thickness adds is added to the rule; a band, a seam and piping have theirs alone', () => {
    const single = width({ finish: 'single', width: mm(10), edgeThick: mm(4) });
    expect(single.thick).toBeGreaterThan(0);
    expect(single.cut).toBeCloseTo(mm(40) + single.thick, 6);
    for (const input of [
      { finish: 'band', width: mm(10), edgeThick: mm(4) },
      { finish: 'seam', seam: mm(10), edgeThick: mm(4) },
      { finish: 'flat', width: mm(5), seam: mm(10), edgeThick: mm(4) },
    ] as const) {
      const { cut: whole, rule, thick } = width(input);
      expect([whole, thick]).toEqual([rule, 0]);
    }
    expect(toMm(width({ finish: 'flat', width: mm(5), seam: mm(10) }).cut)).toBe(30);
  });

  test('round a cord of 6 the middle of the cloth goes round 7: 22 mm, and what is left are its seams', () => {
    const { cut: whole } = width({ finish: 'cord', cord: mm(6), seam: mm(15) });
    expect(toMm(whole)).toBeCloseTo(7 * Math.PI + 30, 4);
    expect(toMm(seamLeft(whole, mm(6), mm(1)))).toBeCloseTo(15, 4);
  });

  test('flat piping without a width is refused for it', () => {
    const none = { finish: 'flat', seam: mm(10), thickness: ZERO } as const;
    expect(fieldsOf(bindingWidth(none))).toEqual(['width']);
  });
});

test('the sharpest of several curves says how far a fold stretches and eases', () => {
  // 10 inside: outward 10 ÷ (50 − 10), inward 10 ÷ (40 + 10) (worked here).
  const edge: BoundEdge = {
    ...{ straight: [mm(100), mm(50)], outLong: [mm(60), mm(70)], outRadius: [mm(50), mm(90)] },
    ...{ inLong: [mm(80), mm(40)], inRadius: [mm(40), mm(110)], corners: [], inside: mm(10) },
    ...{ join: undefined, endTurn: ZERO },
  };
  const { stretch, ease, straight, curves } = solved(bindingLength(edge));
  expect([stretch, ease]).toEqual([0.25, 0.2]);
  // 60 and 70; 80 × 50 ÷ 40 and 40 × 120 ÷ 110.
  expect(toMm(straight)).toBe(150);
  expect(toMm(curves)).toBeCloseTo(60 + 70 + 100 + 480 / 11, 4);
  const bare = { ...edge, outLong: [], outRadius: [], inLong: [], inRadius: [] };
  expect(solved(bindingLength(bare))).toMatchObject({ stretch: 0, ease: 0, curves: 0 });
  const twice = { ...edge, straight: [ZERO, ZERO], endTurn: mm(-1) };
  expect(fieldsOf(bindingLength(twice))).toEqual(['straight', 'endTurn']);
});
