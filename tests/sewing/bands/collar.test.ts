/**
 * Derived here, no source: the turn of the cloth is held to both cloths bent one round the other, the curve to
 * arcs walked in small steps. Row 3.10 (textbook): the outermost layer of a trimmed seam is left widest.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ExactLength, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type CollarInput, collar, layersApart } from '../../../src/sewing/bands/collar.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: ExactLength) => Number((toMm(x) / 10).toFixed(4));
const SHIRT: CollarInput = {
  ...{ front: cm(11), back: cm(8.5), past: ZERO, deep: cm(7), stand: cm(3), outer: undefined },
  ...{ upperThick: undefined, underThick: undefined, between: undefined, rolled: 180 },
  ...{ under: mm(1), seam: cm(1) },
};
const plan = (set: Partial<CollarInput> = {}) => solved(collar({ ...SHIRT, ...set }));

test('a neck of 39 with seams of 1 cm, rolled under by 1 mm: both pieces', () => {
  const { neck, upper, under } = plan();
  expect([neck, upper.long, upper.wide, under.long, under.wide].map(toCm)).toEqual([
    39, 41.2, 9.1, 40.8, 8.9,
  ]);
  expect(upper.run.marks.map(({ at }) => toCm(at))).toEqual([12.1, 20.6, 29.1]);
  expect(under.run.marks.map(({ at }) => toCm(at))).toEqual([11.9, 20.4, 28.9]);
});

test('0.5 mm cloth twice takes 1.57 mm more over the roll, and 3.14 all round', () => {
  const { turn, around, upper, under } = plan({ upperThick: mm(0.5), underThick: mm(0.5) });
  expect([toMm(turn), toMm(around)]).toEqual([
    expect.closeTo(1.5708, 3),
    expect.closeTo(Math.PI, 3),
  ]);
  expect(toMm(upper.wide) - toMm(under.wide)).toBeCloseTo(1.5708 + 2, 3);
  const half = plan({ upperThick: mm(0.5), underThick: mm(0.5), rolled: 90 });
  expect(toMm(half.turn)).toBeCloseTo(0.7854, 3);
  expect(toMm(layersApart({ upperThick: mm(2), underThick: mm(1), between: mm(0.5) }))).toBe(2);
});

test('what stands all up, or lies all flat, has no roll', () => {
  const thick = { upperThick: mm(1), underThick: mm(1) };
  for (const stand of [cm(7), ZERO]) {
    const { turn, around } = plan({ ...thick, stand });
    expect([turn, around]).toEqual([0, 0]);
  }
});

test('an outer edge that is longer curves its neck edge in; a shorter one, out; as long, straight', () => {
  const falls = plan({ outer: cm(46) });
  expect(falls.curve?.inside).toBe('neck');
  expect(toCm(falls.curve?.sector.inner ?? ZERO)).toBe(39);
  const leans = plan({ outer: cm(36) });
  expect(leans.curve?.inside).toBe('outer');
  expect(toCm(leans.curve?.sector.outer ?? ZERO)).toBe(91);
  expect(plan({ outer: cm(39) }).curve).toBeUndefined();
});

test('past the front middle both ends are longer, and its marks further on', () => {
  const { upper } = plan({ past: cm(2) });
  expect([toCm(upper.long), toCm(upper.run.marks[0]?.at ?? ZERO)]).toEqual([45.2, 14.1]);
});

describe('what is refused', () => {
  test.each<[string, Partial<CollarInput>, string]>([
    ['no front', { front: ZERO }, 'front'],
    ['no back', { back: ZERO }, 'back'],
    ['no depth', { deep: ZERO }, 'deep'],
    ['a stand deeper than it', { stand: cm(7.1) }, 'stand'],
    ['a stand below nothing', { stand: mm(-1) }, 'stand'],
    ['an outer edge of nothing', { outer: ZERO }, 'outer'],
    ['past below nothing', { past: mm(-1) }, 'past'],
    ['cloth of no thickness', { upperThick: ZERO }, 'upperThick'],
    ['an under cloth of none', { underThick: ZERO }, 'underThick'],
    ['nothing between', { between: ZERO }, 'between'],
    ['a seam below nothing', { seam: mm(-1) }, 'seam'],
    ['seams rolled under by all of it', { under: cm(7) }, 'under'],
    ['a roll of more than half a turn', { rolled: 181 }, 'rolled'],
    ['a roll of nothing', { rolled: 0 }, 'rolled'],
  ])('%s', (_, set, field) => {
    expect(fieldsOf(collar({ ...SHIRT, ...set }))).toEqual([field]);
  });

  test('a roll from a degree to half a turn will do', () => {
    const rolled = (of: number) => collar({ ...SHIRT, rolled: of });
    expect(boundTold(rolled, 0, 'rolled', 'least')).toBe(1);
    expect(boundTold(rolled, 200, 'rolled', 'most')).toBe(180);
  });
});

describe('laws', () => {
  const thick = typed(0.1, 4);
  test('bent round any gap, each cloth by its own middle, the upper is longer by its turn', () => {
    fc.assert(
      fc.property(
        thick,
        thick,
        thick,
        typed(0.1, 10),
        fc.integer({ min: 10, max: 180 }),
        (upperThick, underThick, between, gap, rolled) => {
          const { turn } = plan({ upperThick, underThick, between, rolled });
          const angle = (rolled * Math.PI) / 180;
          const inner = gap / 2 + underThick / 2;
          const outer = gap / 2 + underThick + between + upperThick / 2;
          expect(turn).toBeCloseTo(angle * (outer - inner), 2);
        },
      ),
      { numRuns: 300, seed: 2210 },
    );
  });

  test('its arcs, walked in small steps, are neck and outer edge; marks mirror about the back middle; twice as large, twice', () => {
    fc.assert(
      fc.property(
        typed(60, 160),
        typed(50, 120),
        typed(30, 150),
        typed(-60, 200),
        (front, back, deep, more) => {
          const neck = 2 * (front + back);
          const outer = length(neck + more);
          const { curve, upper } = plan({ front, back, deep, outer, stand: ZERO });
          const [first, middle, last] = upper.run.marks.map(({ at }) => at);
          expect((first ?? 0) + (last ?? 0)).toBeCloseTo(2 * (middle ?? 0), 3);
          expect(middle).toBeCloseTo(upper.long / 2, 3);
          if (!curve) return;
          const walked = (radius: number) => {
            const steps = 2000;
            return steps * 2 * radius * Math.sin(curve.sector.angle / steps / 2);
          };
          const [inside, outside] = [walked(curve.sector.inner), walked(curve.sector.outer)];
          const [least, most] = [Math.min(neck, outer), Math.max(neck, outer)];
          expect(inside / least).toBeCloseTo(1, 4);
          expect(outside / most).toBeCloseTo(1, 4);
          const twice = plan({
            ...{ front: length(2 * front), back: length(2 * back), deep: length(2 * deep) },
            ...{ outer: length(2 * outer), stand: ZERO, under: mm(2), seam: cm(2) },
          });
          expect(twice.upper.long).toBe(2 * upper.long);
          expect(twice.curve?.sector.inner).toBeCloseTo(2 * curve.sector.inner, 2);
        },
      ),
      { numRuns: 200, seed: 2211 },
    );
  });
});
