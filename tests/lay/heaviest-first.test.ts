import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ranksOf } from '../../src/lay/heaviest-first.ts';

test('the others of a piece come in falling order of heft, each once, time after time', () => {
  const times = fc.integer({ min: 1, max: 12 }).chain((count) => {
    const hefts = fc.array(fc.integer({ min: 0, max: 5 }), { minLength: count, maxLength: count });
    const piece = fc.integer({ min: 0, max: count - 1 });
    return fc.tuple(fc.constant(count), fc.array(fc.tuple(piece, hefts), { maxLength: 6 }));
  });
  fc.assert(
    fc.property(times, ([count, asked]) => {
      const { ranked, sort } = ranksOf(count);
      for (const [piece, hefts] of asked) {
        sort(piece, Float64Array.from(hefts));
        const own = [...ranked.subarray(piece * (count - 1), (piece + 1) * (count - 1))];
        const others = hefts.map((_, i) => i).filter((i) => i !== piece);
        expect([...own].sort((a, b) => a - b)).toEqual(others);
        // By another way: the library's own sort of what the others weigh.
        expect(own.map((i) => hefts[i])).toEqual(
          others.map((i) => hefts[i]!).sort((a, b) => b - a),
        );
      }
    }),
    { seed: 6, numRuns: 100 },
  );
});
