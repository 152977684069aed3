/** Rows 18.2 to 18.5 and 1.22 of the check values; each source stands beside its figure. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inches,
  type Length,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import { placket } from '../../../src/sewing/bands/placket.ts';
import { surely, zipFor } from '../../../src/sewing/bands/zip.ts';
import { LAP_STRIP, TWO_STRIPS, ZIP_PAIRS } from '../../../src/sewing/sources/plackets.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

describe('published', () => {
  // A sewing book of 1944, quoted on a page: 2 in wide, a little longer than twice the opening.
  test('18.4: a finished 3/4 in with seams of 1/4 is 2 in wide; an inch over twice the opening', () => {
    const lap = { way: 'lap', open: inches(4), width: inches(0.75), seam: inches(0.25) } as const;
    const found = solved(placket({ ...lap, extra: inches(0.5) }));
    expect(found).toEqual({ long: inches(9), wide: LAP_STRIP.value.wide });
  });

  // The same: lap 3 in, facing 2 in, opening + 1 in. The facing is 1/4 in wider there than its seams take.
  test('18.5: lap and facing', () => {
    const two = {
      way: 'strips',
      open: inches(6),
      width: inches(1.25),
      seam: inches(0.25),
    } as const;
    const found = solved(placket({ ...two, extra: inches(0.5) }));
    expect(found.long).toBe(inches(6) + TWO_STRIPS.value.more);
    expect(found.wide).toBe(TWO_STRIPS.value.lap);
    expect(toInches(found.facing ?? ZERO)).toBe(1.75);
  });

  // Univ. of Hawaii Extension Circular 352.
  test('18.2: a 24 in zip in 23 in leaves an inch as it is; in 22 1/2 it is shortened', () => {
    const left = solved(zipFor(inches(23), inches(24)));
    expect(left).toMatchObject({ left: inches(1), shorten: undefined });
    const long = solved(zipFor(inches(22.5), inches(24)));
    expect(long.shorten).toEqual({ stop: inches(22.5), cut: inches(22.5) + mm(15) });
  });

  // A trade's sewing guide: whole centimetres beside inches.
  test('1.22: each pair is the nearest centimetre, and one of both is up to 5 mm short', () => {
    const off = ZIP_PAIRS.value.map((pair) => {
      expect(Math.round(2.54 * pair.inches)).toBe(pair.cm);
      return toMm(inches(pair.inches)) - toMm(surely(pair));
    });
    expect(Math.max(...off)).toBeCloseTo(4.8, 6);
  });

  test('a pair serves an opening by its shorter side: 25.4 cm isn’t surely a 10 in zip', () => {
    expect(solved(zipFor(mm(250), undefined)).pair?.inches).toBe(10);
    expect(solved(zipFor(inches(10), undefined)).pair?.inches).toBe(11);
    expect(solved(zipFor(mm(700), undefined))).toMatchObject({ pair: undefined, left: 0 });
  });
});

describe('a zip that is there', () => {
  test('is as long as the opening at least, and is the one that is used', () => {
    const there = (of: number) => zipFor(mm(250), of as Length);
    expect(boundTold(there, mm(200), 'zip', 'least')).toBe(mm(250));
    const own = { pair: undefined, long: mm(260), left: mm(10) };
    expect(solved(there(mm(260)))).toMatchObject(own);
  });
});

describe('laws', () => {
  const any = fc.record({
    open: fc.integer({ min: 1, max: 8_000_000 }).map(length),
    width: fc.integer({ min: 1, max: 800_000 }).map(length),
    seam: fc.integer({ min: 0, max: 200_000 }).map(length),
    extra: fc.integer({ min: 0, max: 200_000 }).map(length),
  });

  test('scaled, all of it is; and the opening comes back from the strip', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 2, max: 9 }), (input, k) => {
        const by = (x: number) => length(k * x);
        for (const way of ['lap', 'strips'] as const) {
          const one = solved(placket({ way, ...input }));
          const more = solved(
            placket({
              ...{ way, open: by(input.open), width: by(input.width) },
              ...{ seam: by(input.seam), extra: by(input.extra) },
            }),
          );
          expect(more.long).toBe(k * one.long);
          expect(more.wide).toBe(k * one.wide);
          expect((one.long - 2 * input.extra) / (way === 'lap' ? 2 : 1)).toBe(input.open);
        }
      }),
      { seed: 2301 },
    );
  });

  test('a zip is never shorter than its opening, and none on the list is nearer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 600 }), (millimetres) => {
        const open = mm(millimetres);
        const { pair, long, left, shorten } = solved(zipFor(open, undefined));
        expect(long).toBe(open + left);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(shorten !== undefined).toBe(left > inches(1));
        const shorter = ZIP_PAIRS.value.filter((one) => pair && one.inches < pair.inches);
        for (const one of shorter) expect(surely(one)).toBeLessThan(open);
      }),
      { seed: 2302 },
    );
  });
});

test('what is wrong names its field', () => {
  const lap = { way: 'lap', open: mm(100), width: ZERO, seam: mm(-1), extra: mm(-1) } as const;
  expect(fieldsOf(placket(lap))).toEqual(['width', 'seam', 'extra']);
  expect(fieldsOf(zipFor(mm(100), mm(90)))).toEqual(['zip']);
  expect(fieldsOf(zipFor(mm(100), ZERO))).toEqual(['zip']);
});
