import { describe, expect, test } from 'vitest';
import { type Length, mm } from '../../../src/lengths/length.ts';
import type { StripInput } from '../../../src/sewing/edging/strip.ts';
import { joinProblems } from '../../../src/sewing/edging/strip-joined.ts';
import { A_STRIP } from './a-strip.ts';

const at = (crossings: readonly number[], set: Partial<StripInput> = {}) =>
  joinProblems({ ...A_STRIP, ...set }, mm(150), crossings as readonly Length[]);

// Where the joint that closes a loop is, a strip may not be crossed: a strip's width to either side (ours).
describe('where a strip may be crossed', () => {
  test.each<[string, Partial<StripInput>, number, number]>([
    ['an open one from end to end', {}, 0, 400],
    ['a loop a width from its joint', { fit: 'loop' }, 20, 380],
    ['an outline all round', { fit: 'loop', corners: [mm(100), mm(200), mm(300)] }, 0, 400],
    ['a loop shorter than two widths in its middle', { fit: 'loop', length: mm(30) }, 15, 15],
  ])('%s', (_, set, least, most) => {
    const inside = [mm(least), mm((least + most) / 2), mm(most)];
    expect(at(inside, set)).toEqual([]);
    for (const given of [mm(least) - 1, mm(most) + 1]) {
      expect(at([...inside, given], set)).toEqual([
        { kind: 'outside', field: 'crossings', given, least: mm(least), most: mm(most) },
      ]);
    }
  });

  test('pieces of nothing are none', () => {
    expect(joinProblems(A_STRIP, mm(0), [])).toMatchObject([{ field: 'stock' }]);
    expect(joinProblems(A_STRIP, undefined, [])).toEqual([]);
  });
});
