import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LONGEST, length, mm } from '../../src/lengths/length.ts';
import { centreByCount } from '../../src/sewing/edging/centre.ts';
import { hem } from '../../src/sewing/hems/hem.ts';
import { curvedHem } from '../../src/sewing/hems/hem-curve.ts';
import { facedHem } from '../../src/sewing/hems/hem-facing.ts';
import { mitre } from '../../src/sewing/hems/mitre.ts';
import { trueTaper } from '../../src/sewing/hems/taper.ts';
import type { Outcome } from '../../src/sewing/problem.ts';
import { changeAllowance, letOut } from '../../src/sewing/seams/seam-change.ts';
import { clipCurve } from '../../src/sewing/seams/seam-clips.ts';
import { finishSeam } from '../../src/sewing/seams/seam-finish.ts';

/** Everything a length field lets through: nothing, less than nothing, up to the longest. */
const typed = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 1, max: 800 }).map(mm) },
  fc.constantFrom(0, 1, -1, LONGEST, -LONGEST).map(length),
  fc.integer({ min: -LONGEST, max: LONGEST }).map(length),
);
const maybe = fc.option(typed, { nil: undefined });
const number = fc.oneof(
  fc.integer({ min: 1, max: 180 }),
  fc.integer({ min: -10, max: 3000 }),
  fc.double({ min: -1000, max: 1000 }),
  fc.constantFrom(Number.NaN, 9e15, -9e15),
);

/** What may be less than nothing, since its sign is what it says. */
const SIGNED = new Set(['eachSide', 'eachEdge', 'girth', 'first', 'last', 'atSeam', 'halfFold']);

/** Every number in a result, with the name it stands under. */
function numbersIn(value: unknown, name = ''): [string, number][] {
  if (typeof value === 'number') return [[name, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    numbersIn(inner, /^\d+$/.test(key) ? name : key),
  );
}

const curves = fc.oneof(
  fc.record({
    by: fc.constant('rise' as const),
    chord: typed,
    rise: typed,
    inward: fc.boolean(),
  }),
  fc.record({ by: fc.constant('readings' as const), round: typed, above: typed, apart: typed }),
);
const thickness = fc.oneof(fc.constantFrom(0, 2400, 16_000).map(length), typed);
const hemParts = { depth: typed, turn: typed, edgeStitch: typed, finished: maybe, left: maybe };
const finish = fc.constantFrom(
  ...(['plain', 'french', 'felled', 'mock-french', 'bound', 'graded'] as const),
);

const WORKS: Record<string, fc.Arbitrary<() => Outcome<unknown>>> = {
  hem: fc.record({ ...hemParts, otherEnd: maybe, thickness }).map((input) => () => hem(input)),
  facing: fc
    .record({ ...hemParts, otherEnd: maybe, thickness, seam: typed, radius: maybe })
    .map((input) => () => facedHem(input)),
  curve: fc.tuple(typed, curves, number).map(
    ([depth, curve, ease]) =>
      () =>
        curvedHem(depth, curve, ease / 100),
  ),
  mitre: fc
    .record({
      depth: typed,
      side: typed,
      angle: number,
      edgeStitch: typed,
      thickness,
      turned: fc.constantFrom('once' as const, 'twice' as const, 'equal' as const),
    })
    .map((input) => () => mitre(input)),
  taper: fc
    .record({ atHem: typed, above: typed, apart: typed, depth: typed, turn: typed })
    .map((input) => () => trueTaper(input)),
  finish: fc
    .record({
      finish,
      given: typed,
      first: typed,
      trim: typed,
      second: typed,
      under: typed,
      turn: typed,
    })
    .map((input) => () => finishSeam(input)),
  change: fc
    .record({ pattern: typed, wanted: typed, seams: number })
    .map((input) => () => changeAllowance(input)),
  'let out': fc
    .record({ allowance: typed, change: typed, seams: number, least: typed, more: fc.boolean() })
    .map(
      ({ least, more, ...input }) =>
        () =>
          letOut({ ...input, least: { at: length(Math.abs(least)), more } }),
    ),
  clips: fc
    .record({
      radius: typed,
      allowance: typed,
      opening: typed,
      along: maybe,
    })
    .map((input) => () => clipCurve(input)),
  centre: fc
    .record({
      count: number,
      other: fc.option(number, { nil: undefined }),
      pitch: maybe,
      measured: maybe,
    })
    .map((input) => () => centreByCount(input)),
};

test.each(Object.entries(WORKS))(
  '%s: whatever is typed, there is an answer with lengths that can be, or a named field',
  (_, works) => {
    let [tried, answers] = [0, 0];
    fc.assert(
      fc.property(works, (work) => {
        tried += 1;
        const outcome = work();
        if (!outcome.ok) {
          for (const { field } of outcome.problems) expect(field).toMatch(/^[a-zA-Z]+$/);
          return;
        }
        answers += 1;
        for (const [name, value] of numbersIn(outcome.value)) {
          expect(Number.isFinite(value), name).toBe(true);
          if (!SIGNED.has(name)) expect(value, name).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 2000, seed: 1200 },
    );
    // One in 200 at least, or the law says little.
    expect(answers).toBeGreaterThan(tried / 200);
  },
);
