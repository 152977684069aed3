/** Row 7.19 of the check values; all else is derived, and held to a search over the cloth, line by line. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  type CentreInput,
  centred,
  type MatchInput,
  matchAt,
  panels,
  pastLine,
  repeatOf,
  slanted,
} from '../../../src/sewing/cloth/repeat.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);

// A teaching page on buying cloth: one full repeat more. It serves one match, not three.
test('7.19: 4 panels of 110 at a repeat of 32: 494 cm, by the published rule 472', () => {
  const found = solved(panels({ span: cm(32), repeats: 1 }, 4, cm(110)));
  expect(toMm(found.cloth)).toBe(4940);
  expect(toMm(found.rule)).toBe(4720);
  const two = solved(panels({ span: cm(32), repeats: 1 }, 2, cm(110)));
  expect(two.cloth).toBeLessThan(two.rule);
});

test('a panel of just so many repeats takes no more, also of a repeat that is no whole number', () => {
  const found = solved(panels({ span: cm(10), repeats: 3 }, 3, cm(20)));
  expect(found).toMatchObject({ each: 6, cloth: cm(60), extra: 0 });
});

describe('laws', () => {
  const by = fc.record({
    span: fc.integer({ min: 800, max: 4_000_000 }).map(length),
    repeats: fc.integer({ min: 1, max: 12 }),
  });
  const size = fc.integer({ min: 0, max: 8_000_000 }).map(length);
  const off = (place: number, repeat: number) => {
    const over = ((place % repeat) + repeat) % repeat;
    return Math.min(over, repeat - over);
  };

  test('panels lie apart, on the same line of the repeat, and none could lie nearer', () => {
    fc.assert(
      fc.property(by, fc.integer({ min: 1, max: 9 }), size, (input, count, more) => {
        const long = length(more + 1);
        const repeat = repeatOf(input);
        const { run, cloth, extra } = solved(panels(input, count, long));
        const places = run.marks.map(({ at }) => at);
        for (const at of places) expect(off(at, repeat)).toBeLessThan(1e-3 + 1e-9 * at);
        for (const [i, at] of places.slice(1).entries()) {
          const space = at - (places[i] ?? 0);
          expect(space).toBeGreaterThanOrEqual(long - 1e-3);
          expect(space - repeat).toBeLessThan(long);
        }
        expect(cloth - (places.at(-1) ?? 0)).toBeCloseTo(long, 3);
        expect(extra).toBeCloseTo(cloth - count * long, 3);
        expect(extra).toBeLessThanOrEqual((count - 1) * repeat);
      }),
      { seed: 2801 },
    );
  });

  test('split, two lengths of panels take no less than all in one', () => {
    fc.assert(
      fc.property(by, fc.integer({ min: 2, max: 9 }), size, (input, count, more) => {
        const long = length(more + 1);
        const of = (n: number) => solved(panels(input, n, long)).cloth;
        expect(of(count)).toBeGreaterThanOrEqual(of(count - 1) + of(1) - 1e-3);
        expect(of(count) - of(count - 1) - of(1)).toBeLessThan(repeatOf(input));
      }),
      { seed: 2802 },
    );
  });

  test('a second piece shows at its match point what the first one shows, at the first place there is', () => {
    fc.assert(
      fc.property(by, size, size, size, (input, first, below, free) => {
        const repeat = repeatOf(input);
        const { start, lost, on } = solved(matchAt({ ...input, first, below, free }));
        expect(off(start + below - first, repeat)).toBeLessThan(0.1);
        expect(start).toBeGreaterThanOrEqual(free - 1e-3);
        expect(lost).toBeLessThan(repeat);
        expect(first + on * repeat - below).toBeCloseTo(start, 2);
      }),
      { seed: 2803 },
    );
  });

  test('a centred piece has its last lines alike at both edges; mirrored it is the same', () => {
    const piece = fc.constantFrom('line' as const, 'between' as const);
    fc.assert(
      fc.property(by, size, piece, (input, more, on) => {
        const repeat = repeatOf(input);
        const wide = length(Math.ceil(repeat) + more);
        const { inside, repeats } = solved(centred({ ...input, wide, on }));
        expect(inside).toBeGreaterThanOrEqual(0);
        expect(inside).toBeLessThan(repeat);
        const phase = on === 'line' ? 0 : repeat / 2;
        // From the one last line to the other there are whole repeats.
        expect(off(wide - 2 * inside, repeat)).toBeLessThan(0.1);
        expect(wide / 2 - inside).toBeCloseTo(phase + repeats * repeat, 2);
      }),
      { seed: 2804 },
    );
  });

  test('scaled, all of it is', () => {
    fc.assert(
      fc.property(by, size, size, fc.integer({ min: 2, max: 5 }), (input, first, free, k) => {
        const at = (by: number): MatchInput => ({
          ...{ span: length(by * input.span), repeats: input.repeats },
          ...{ first: length(by * first), below: ZERO, free: length(by * free) },
        });
        const [one, more] = [solved(matchAt(at(1))), solved(matchAt(at(k)))];
        expect(more.start).toBeCloseTo(k * one.start, 1);
      }),
      { seed: 2805 },
    );
  });

  test('equal slants match all along; else the drift is what lines of both edges are apart', () => {
    const angle = fc.integer({ min: 0, max: 85 });
    fc.assert(
      fc.property(by, angle, angle, size, (input, one, other, more) => {
        const seam = length(more + 1);
        const found = solved(slanted({ ...input, one, other, seam }));
        if (one === other) expect(found.drift).toBe(0);
        const repeat = repeatOf(input);
        const down = (edge: number) => (seam / edge) * repeat;
        expect(found.drift).toBeCloseTo(Math.abs(down(found.one) - down(found.other)), 2);
      }),
      { seed: 2806 },
    );
  });
});

test('past a line by as much as is left of whole repeats, also of a repeat that is no whole number', () => {
  const size = fc.integer({ min: 0, max: 8_000_000 }).map(length);
  const input = fc.record({
    span: fc.integer({ min: 8000, max: 800_000 }).map(length),
    repeats: fc.integer({ min: 1, max: 9 }),
  });
  fc.assert(
    fc.property(input, size, fc.nat(40), (repeat, place, more) => {
      const past = pastLine(repeat, place);
      const whole = (place - past) / repeatOf(repeat);
      expect(Math.abs(whole - Math.round(whole)) * repeatOf(repeat)).toBeLessThan(1 + 1e-3);
      expect(past >= 0 && past < repeatOf(repeat)).toBe(true);
      const on = exactLength(Math.ceil(more * repeatOf(repeat)));
      expect(pastLine(repeat, on)).toBeLessThan(1 + 1e-3);
    }),
    { seed: 2813 },
  );
});

// By hand, a repeat of 32.
describe('on a line just so', () => {
  const by = { span: cm(32), repeats: 1 };
  const matched = (set: Partial<MatchInput>) => {
    const { start, on, lost } = solved(
      matchAt({ ...by, first: ZERO, below: ZERO, free: ZERO, ...set }),
    );
    return [toMm(start) / 10, on, toMm(lost) / 10];
  };

  test('cloth that is free from the very line loses none; from 10 on, all to where it matches', () => {
    expect(matched({ free: cm(32) })).toEqual([32, 1, 0]);
    expect(matched({ first: cm(5), free: cm(10) })).toEqual([37, 1, 27]);
    // A third of 10, seven times: no repeat is lost to what dividing leaves over.
    const third = { span: cm(10), repeats: 3 };
    expect(matched({ ...third, free: cm(70) })).toEqual([70, 21, 0]);
  });

  test('a piece two repeats wide has its lines on its edges', () => {
    expect(solved(centred({ ...by, wide: cm(64), on: 'line' }))).toEqual({ inside: 0, repeats: 1 });
    expect(solved(centred({ ...by, wide: cm(96), on: 'between' })).repeats).toBe(1);
  });

  test('between two lines one as wide as the repeat has them on its edges, a narrower one none', () => {
    const wide = (of: number) => centred({ ...by, wide: length(of), on: 'between' });
    expect(boundTold(wide, cm(20), 'wide', 'least')).toBe(cm(32));
    expect(fieldsOf(centred({ span: ZERO, repeats: 0, wide: ZERO, on: 'line' }))).toEqual([
      ...['span', 'repeats', 'wide'],
    ]);
  });

  // Of 60° the cosine is a half.
  test('at 60° from the warp a repeat is twice as long, and half the seam is drift', () => {
    const { one, other, drift } = solved(slanted({ ...by, one: 60, other: 0, seam: cm(100) }));
    expect(toMm(one)).toBeCloseTo(640, 6);
    expect(toMm(other)).toBe(320);
    expect(toMm(drift)).toBeCloseTo(500, 6);
  });
});

test('what is wrong names its field', () => {
  const by = { span: cm(32), repeats: 1 };
  expect(fieldsOf(panels({ span: ZERO, repeats: 0 }, 0, ZERO))).toEqual([
    ...['span', 'repeats', 'panels', 'long'],
  ]);
  const none = { ...by, first: mm(-1), below: mm(-1), free: mm(-1) };
  expect(fieldsOf(matchAt(none))).toEqual(['first', 'below', 'free']);
  const narrow: CentreInput = { ...by, wide: cm(31), on: 'between' };
  expect(fieldsOf(centred(narrow))).toEqual(['wide']);
  expect(solved(centred({ ...narrow, on: 'line' })).inside).toBe(exactLength(cm(31) / 2));
  expect(fieldsOf(centred({ ...narrow, wide: ZERO }))).toEqual(['wide']);
  expect(fieldsOf(slanted({ ...by, one: -1, other: 86, seam: ZERO }))).toEqual([
    'one',
    'other',
    'seam',
  ]);
});
