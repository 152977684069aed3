/** Derived here, no source: the strip is laid out piece by piece beside what the whole of it comes to. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { cornerPleats } from '../../../src/sewing/hems/binding-corners.ts';
import {
  type BoundEdge,
  bindingLength,
  cornerTakes,
} from '../../../src/sewing/hems/binding-length.ts';
import { typed } from '../closures/closures-cases.ts';
import { solved } from '../outcomes.ts';

const MAT: BoundEdge = {
  straight: [mm(450), mm(300), mm(450), mm(300)],
  ...{ outLong: [], outRadius: [], inLong: [], inRadius: [] },
  corners: [90, 90, 90, 90],
  inside: mm(10),
  join: mm(6),
  endTurn: ZERO,
};
const at = (set: Partial<BoundEdge>) =>
  cornerPleats({ ...MAT, ...set })?.marks.map((mark) => Math.round(toMm(mark.at) * 100) / 100);

test('a mat of 45 by 30, bound 1 cm: from the join in the middle of a side, each pleat 2 cm', () => {
  // Half of 2 x 1.414 x 6 is 8.49; half the side 225; then 300, 450, 300, each after a pleat of 20.
  expect(at({})).toEqual([233.49, 553.49, 1023.49, 1343.49]);
  expect(cornerPleats(MAT)?.marks.map(({ taken }) => toMm(taken!))).toEqual([0, 20, 40, 60]);
});

test('corners are numbered from the beginning', () => {
  expect(cornerPleats(MAT)?.marks.map(({ label }) => label)).toEqual(['1', '2', '3', '4']);
});

test('open: from one turned end to the other', () => {
  const open = { straight: [mm(100), mm(200)], corners: [90], join: undefined, endTurn: mm(10) };
  expect(at(open)).toEqual([110]);
});

test.each<[string, Partial<BoundEdge>]>([
  ['no corners', { corners: [] }],
  ['one straight part, open', { straight: [mm(100)], corners: [], join: undefined }],
  ['a corner too few', { corners: [90, 90, 90] }],
  ['a curve outward between them', { outLong: [mm(10)], outRadius: [mm(30)] }],
  ['a curve inward', { inLong: [mm(10)], inRadius: [mm(30)] }],
  ['sewn along its edge', { inside: ZERO }],
  ['open, with a corner after its end', { join: undefined }],
])('not known: %s', (_, set) => {
  expect(cornerPleats({ ...MAT, ...set })).toBeUndefined();
});

test('a length that comes to whole units is not made one more by how it is added up', () => {
  const two = { straight: [mm(50), mm(50)], corners: [130, 114], inside: mm(21.4), join: mm(6.35) };
  expect(cornerPleats({ ...MAT, ...two })?.length).toBe(
    solved(bindingLength({ ...MAT, ...two })).long,
  );
});

test('what follows the last corner makes the strip as long as it is cut', () => {
  const sides = fc.array(fc.tuple(typed(50, 600), fc.integer({ min: 30, max: 330 })), {
    minLength: 2,
    maxLength: 6,
  });
  fc.assert(
    fc.property(sides, typed(3, 30), typed(0, 12), (all, inside, join) => {
      const edge = {
        ...MAT,
        straight: all.map(([long]) => long),
        corners: all.map(([, angle]) => angle),
        ...{ inside, join },
      };
      const { marks } = cornerPleats(edge)!;
      const last = marks.at(-1)!.at + cornerTakes(all.at(-1)![1], inside);
      const rest = all[0]![0] / 2 + marks[0]!.at - all[0]![0] / 2;
      const { long } = solved(bindingLength(edge));
      expect(Math.abs(last + rest - long)).toBeLessThan(1);
      expect(cornerPleats(edge)!.length).toBe(Math.ceil(long) as Length);
      marks.slice(1).forEach((mark, i) => {
        const step = mark.at - marks[i]!.at;
        const pleat = mark.taken! - marks[i]!.taken!;
        expect(Math.abs(step - pleat - all[i + 1]![0])).toBeLessThan(1);
      });
    }),
    { numRuns: 100, seed: 271 },
  );
});
