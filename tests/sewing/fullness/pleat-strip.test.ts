import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Length, length, ZERO } from '../../../src/lengths/length.ts';
import { pleatsInStrip } from '../../../src/sewing/fullness/pleat-strip.ts';
import { pleats } from '../../../src/sewing/fullness/pleats.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => length(Math.round(x * 80_000));
const KNIFE = { kind: 'knife', ends: 'fold', flat: ZERO, seam: ZERO } as const;

// Dress Making, Trade Practical 2 (teaching book, Government of India, 2024), page 205: the source asks only; by its own rule.
test.each<[string, number, number, number, number, number]>([
  ['11.13, exercise', 144.5, 3.5, 2.5, 17, 59.5],
  ['11.14, exercise: eight of 7', 120, 7, 4, 8, 56],
  ['11.2 turned round', 236, 92 / 18, 4, 18, 92],
])(
  '%s: a strip of %s in pleats of %s, %s deep, gives %s over %s',
  (_, there, width, depth, count, over) => {
    const input = solved(
      pleatsInStrip({
        ...KNIFE,
        there: cm(there),
        width: length(Math.floor(width * 80_000)),
        depth: cm(depth),
      }),
    );
    expect(input).toMatchObject({ rule: { by: 'count', count }, finished: cm(over) });
  },
);

test('as many as it has room for, no cloth lost, seams and flat part kept', () => {
  const size = (most: number) => fc.integer({ min: 1, max: most }).map((n): Length => length(n));
  fc.assert(
    fc.property(
      fc.record({
        kind: fc.constantFrom('knife' as const, 'inverted' as const),
        ...{ there: size(4_000_000), width: size(400_000), depth: size(400_000) },
        ...{ flat: size(80_000), seam: size(20_000) },
      }),
      (strip) => {
        const input = pleatsInStrip({ ...strip, ends: 'fold' });
        const one = strip.width + strip.depth * (strip.kind === 'knife' ? 2 : 4);
        const room = strip.there - 2 * strip.seam - strip.flat;
        if (!input.ok) {
          expect(room < one || room > 300 * one).toBe(true);
          return;
        }
        const { count, cut, width } = solved(pleats(input.value));
        expect(cut).toBe(strip.there);
        expect(count * one <= room && room < (count + 1) * one).toBe(true);
        expect(width).toBeGreaterThanOrEqual(strip.width);
      },
    ),
    { seed: 1113, numRuns: 400 },
  );
});

test.each<[string, Partial<Parameters<typeof pleatsInStrip>[0]>, string[]]>([
  ['too short for one', { there: cm(8.4) }, ['there']],
  ['far too long', { there: cm(2600) }, ['there']],
  ['nothing wide', { width: ZERO }, ['width']],
  ['nothing deep, of nothing', { depth: ZERO, there: ZERO }, ['there', 'depth']],
])('%s: refused at its field', (_, set, fields) => {
  const strip = { ...KNIFE, there: cm(144.5), width: cm(3.5), depth: cm(2.5) };
  expect(fieldsOf(pleatsInStrip({ ...strip, ...set }))).toEqual(fields);
});
