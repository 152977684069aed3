import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, inches, mm, toInches, toMm } from '../../src/lengths/length.ts';
import { equalParts, followedMarks } from '../../src/sewing/equal-parts.ts';
import { typed } from './closures/closures-cases.ts';
import { fieldsOf, solved } from './outcomes.ts';

const places = (input: Parameters<typeof equalParts>[0]) => {
  const { edge, other } = solved(equalParts(input));
  return [edge, other].map((one) => one?.run.marks.map(({ at, label }) => [label, toMm(at)]));
};

// Quarters of the elastic to quarters of the edge is common practice, no source; worked by hand.
describe('worked by hand', () => {
  test('a waist of 72 cm in quarters, all round: four marks, the first at the seam', () => {
    const [edge] = places({ length: mm(720), parts: 4, round: true });
    expect(edge).toEqual([
      ['0', 0],
      ['1/4', 180],
      ['1/2', 360],
      ['3/4', 540],
    ]);
  });

  test('an edge with two ends in eighths has seven marks and none at the ends', () => {
    const { edge } = solved(equalParts({ length: inches(28), parts: 8, round: false }));
    expect(edge.run.marks.map(({ at }) => toInches(at))).toEqual([
      3.5, 7, 10.5, 14, 17.5, 21, 24.5,
    ]);
    expect(edge.run.marks.map(({ label }) => label).join(' ')).toBe('1/8 1/4 3/8 1/2 5/8 3/4 7/8');
  });

  test('elastic of 60 cm to an edge of 96 cm: 9 cm more in each quarter of the edge', () => {
    const input = { length: mm(600), parts: 4, round: true, other: mm(960) };
    expect(toMm(solved(equalParts(input)).longer ?? mm(0))).toBe(90);
    const { edge, other } = solved(equalParts(input));
    expect([toMm(edge.part), other && toMm(other.part)]).toEqual([150, 240]);
    expect(places(input)[1]).toEqual([
      ['0', 0],
      ['1/4', 240],
      ['1/2', 480],
      ['3/4', 720],
    ]);
  });

  test('what is wrong names its field', () => {
    const fine = { length: mm(100), parts: 4, round: true };
    expect(fieldsOf(equalParts({ ...fine, length: mm(0) }))).toEqual(['length']);
    expect(fieldsOf(equalParts({ ...fine, other: mm(-1) }))).toEqual(['other']);
    for (const parts of [1, 0, 2.5, 501]) {
      expect(fieldsOf(equalParts({ ...fine, parts }))).toEqual(['count']);
    }
  });
});

// A second road: walked part by part, every step is the part, and both edges keep the same fractions.
test('all parts are alike, the last too, and both edges carry the same fractions', () => {
  const cases = [
    typed(10, 3000),
    typed(10, 3000),
    fc.integer({ min: 2, max: 500 }),
    fc.boolean(),
  ] as const;
  fc.assert(
    fc.property(...cases, (length, other, parts, round) => {
      const { edge, other: meets, longer } = solved(equalParts({ length, other, parts, round }));
      for (const [one, whole] of [
        [edge, length],
        [meets, other],
      ] as const) {
        const ends = [...(round ? [] : [0]), ...(one?.run.marks.map(({ at }) => at) ?? []), whole];
        expect(ends).toHaveLength(parts + 1);
        ends.slice(1).forEach((at, i) => {
          expect(at - ends[i]!).toBeCloseTo(whole / parts, 4);
        });
      }
      const labels = edge.run.marks.map(({ label }) => label);
      expect(meets?.run.marks.map(({ label }) => label)).toEqual(labels);
      expect(new Set(labels).size).toBe(labels.length);
      expect(longer).toBeCloseTo(other / parts - length / parts, 4);
    }),
    { seed: 12 },
  );
});

test('law: marks that follow those of an even edge divide it as evenly, and the edge it meets', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 3000 }),
      fc.integer({ min: 100, max: 3000 }),
      fc.integer({ min: 2, max: 60 }),
      fc.boolean(),
      (long, met, parts, round) => {
        const edges = { length: mm(long), other: mm(met) };
        const even = solved(equalParts({ ...edges, parts, round }));
        const follow = even.edge.run.marks.map(({ at }) => at);
        const found = solved(followedMarks(edges, follow));
        expect(found.edge.marks.map(({ at }) => at)).toEqual(follow);
        for (const [i, { at }] of (found.other?.marks ?? []).entries()) {
          expect(at).toBeCloseTo(even.other?.run.marks[i]?.at ?? Number.NaN, 3);
        }
      },
    ),
    { seed: 1422 },
  );
});

test('places of an edge of 60 are half as far again on one of 90', () => {
  const follow = [5, 20, 60].map((cm) => exactLength(mm(10 * cm)));
  const { other } = solved(followedMarks({ length: mm(600), other: mm(900) }, follow));
  expect(other?.marks.map(({ at }) => toMm(at))).toEqual([75, 300, 900]);
  expect(other?.length).toBe(mm(900));
  const none = followedMarks({ length: mm(0), other: mm(0) }, [exactLength(0)]);
  expect(fieldsOf(none)).toEqual(['length', 'other']);
});

test('what can’t lie on the edge, or lies twice, is a problem of what it follows', () => {
  const problems = (...follow: number[]) => {
    const found = followedMarks(
      { length: mm(600) },
      follow.map((at) => exactLength(mm(at))),
    );
    return found.ok ? [] : found.problems.map(({ kind, field }) => [kind, field]);
  };
  expect(problems()).toEqual([['too-few', 'follow']]);
  expect(problems(-1, 5)).toEqual([['outside', 'follow']]);
  expect(problems(5, 601)).toEqual([['outside', 'follow']]);
  expect(problems(5, 5)).toEqual([['twice', 'follow']]);
  expect(problems(0, 600)).toEqual([]);
});
