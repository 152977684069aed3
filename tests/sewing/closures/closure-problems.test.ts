import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { problemWords } from '#words/controls/problem-words.ts';
import {
  exactLength,
  type Length,
  LONGEST,
  length,
  mm,
  toMm,
} from '../../../src/lengths/length.ts';
import type { ClosuresInput, SpacingRule } from '../../../src/sewing/closures/closure-input.ts';
import { type ClosurePlan, spaceClosures } from '../../../src/sewing/closures/closures.ts';
import { byCount, opening, planFor, problems, someEnds, typed } from './closures-cases.ts';

const wrong = (input: ClosuresInput) => problems(spaceClosures(input));
const minus = length(-8000);
const none = length(0);

describe('each field by itself', () => {
  test.each([
    ['opening', opening(none, byCount(3)), 'not-positive'],
    ['opening', opening(minus, byCount(3)), 'not-positive'],
    ['opening', opening(length(LONGEST + 1), byCount(3)), 'too-long'],
    ['top', opening(mm(100), byCount(3), { top: minus }), 'negative'],
    ['bottom', opening(mm(100), byCount(3), { bottom: minus }), 'negative'],
    ['count', opening(mm(100), byCount(0)), 'too-few'],
    ['count', opening(mm(100), byCount(-2)), 'too-few'],
    ['count', opening(mm(100), byCount(2001)), 'too-many'],
    ['count', opening(mm(100), byCount(2.5)), 'not-whole'],
    ['count', opening(mm(100), byCount(Number.NaN)), 'not-whole'],
    ['count', opening(mm(100), byCount(Infinity)), 'not-whole'],
    ['pitch', opening(mm(100), { by: 'widest', pitch: none }), 'not-positive'],
    ['pitch', opening(mm(100), { by: 'exact', pitch: minus }), 'not-positive'],
    ['gap', opening(mm(100), { by: 'gap', gap: minus, width: mm(5) }), 'negative'],
    ['width', opening(mm(100), { by: 'gap', gap: mm(5), width: none }), 'not-positive'],
    ['width', opening(mm(100), byCount(3), { width: none }), 'not-positive'],
  ])('%s', (field, input, kind) => {
    expect(wrong(input)).toEqual([expect.objectContaining({ field, kind })]);
  });

  test('several at once are all named', () => {
    const input = opening(none, byCount(0), { top: minus });
    expect(wrong(input).map(({ field }) => field)).toEqual(['opening', 'top', 'count']);
  });

  test('what the ends do not use is not minded', () => {
    expect(spaceClosures(opening(mm(100), byCount(3), { ends: 'half', top: minus })).ok).toBe(true);
  });
});

describe('between fields', () => {
  test('ends longer than the opening: how much is missing', () => {
    const input = opening(mm(100), byCount(3), { top: mm(70), bottom: mm(45) });
    expect(wrong(input)).toEqual([
      { kind: 'ends-too-long', field: 'bottom', room: mm(100), needed: mm(115) },
    ]);
  });

  test('several with nothing between first and last', () => {
    const input = opening(mm(100), byCount(3), { top: mm(60), bottom: mm(40) });
    expect(wrong(input)[0]).toMatchObject({ kind: 'ends-too-long', needed: mm(100) });
    expect(wrong({ ...input, sewn: [mm(60)] })[0]).toMatchObject({ kind: 'ends-too-long' });
  });

  test('a pitch so close that more than 2,000 would be needed', () => {
    const rule = { by: 'widest', pitch: mm(0.1) } as const;
    const [problem] = wrong(opening(mm(999.5), rule));
    expect(problem).toEqual({ kind: 'too-close', field: 'pitch', least: mm(0.5), most: 2000 });
    expect(planFor(opening(mm(999.5), { by: 'widest', pitch: mm(0.5) })).count).toBe(2000);
  });

  test('a kept pitch wider than there is room for', () => {
    const rule = { by: 'exact', pitch: mm(60) } as const;
    expect(wrong(opening(mm(100), rule, { ends: 'whole' }))).toEqual([
      { kind: 'does-not-fit', field: 'pitch', room: mm(100), needed: mm(120) },
    ]);
    const gap = { by: 'gap', gap: mm(95), width: mm(10) } as const;
    expect(wrong(opening(mm(100), gap, { ends: 'half' }))[0]).toMatchObject({
      kind: 'does-not-fit',
      field: 'gap',
    });
  });

  test('items wider than the pitch', () => {
    expect(wrong(opening(mm(90), byCount(4), { width: mm(32) }))).toEqual([
      { kind: 'overlap', field: 'width', given: mm(32), pitch: mm(30) },
    ]);
  });

  test('a level outside first to last', () => {
    const input = opening(mm(100), byCount(4), { top: mm(10), bottom: mm(20), level: mm(85) });
    expect(wrong(input)).toEqual([
      { kind: 'outside', field: 'level', given: mm(85), least: mm(10), most: mm(80) },
    ]);
    expect(wrong({ ...input, level: mm(9) })[0]).toMatchObject({ kind: 'outside' });
    expect(wrong({ ...input, ends: 'half', level: mm(100) })).toEqual([
      { kind: 'not-under', field: 'level', under: mm(100), given: mm(100) },
    ]);
  });

  test('sewn marks: outside, twice, more than are wanted', () => {
    const input = opening(mm(100), byCount(3));
    const sewn = [mm(120), mm(30), mm(30), length(-8)];
    expect(wrong({ ...input, sewn })).toEqual([
      { kind: 'outside', field: 'sewn', given: mm(120), least: 0, most: mm(100) },
      { kind: 'outside', field: 'sewn', given: -8, least: 0, most: mm(100) },
      { kind: 'twice', field: 'sewn', given: mm(30) },
      { kind: 'fewer-than-sewn', field: 'count', sewn: 4, given: 3 },
    ]);
  });

  test('sewn ones that lie closer than an item is wide are not minded', () => {
    const input = opening(mm(100), byCount(4), { sewn: [mm(40), mm(45)], width: mm(10) });
    expect(planFor(input).count).toBe(4);
  });
});

/** Anything a field could hold, sensible or not. */
const anyLength = fc.oneof(
  typed(0, 600),
  fc.constantFrom(0, 1, -1, 8000, -8000, LONGEST, LONGEST + 1, Number.MAX_SAFE_INTEGER).map(length),
  fc.integer({ min: -(2 ** 50), max: 2 ** 50 }).map(length),
);
const anyCount = fc.oneof(
  fc.integer({ min: -3, max: 30 }),
  fc.constantFrom(1999, 2000, 2001, 1e9, -1e300, Number.NaN, Infinity, 0.5),
);
const anyRule: fc.Arbitrary<SpacingRule> = fc.oneof(
  fc.record({ by: fc.constant('count'), count: anyCount }),
  fc.record({ by: fc.constantFrom('widest', 'exact'), pitch: anyLength }),
  fc.record({ by: fc.constant('gap'), gap: anyLength, width: anyLength }),
);
const maybe = <Value>(of: fc.Arbitrary<Value>) => fc.option(of, { nil: undefined, freq: 2 });
const sensible = { opening: typed(100, 600), top: typed(0, 40), bottom: typed(0, 40) };
const inputs = (lengths: typeof sensible | Record<keyof typeof sensible, fc.Arbitrary<Length>>) =>
  fc.record({
    ...lengths,
    ends: someEnds,
    rule: anyRule,
    level: maybe(anyLength),
    levelBy: maybe(fc.constantFrom('two-pitches', 'moved-ends')),
    sewn: maybe(fc.array(anyLength, { maxLength: 5 })),
    width: maybe(anyLength),
  });
const anything = fc.oneof(
  inputs(sensible),
  inputs({ opening: anyLength, top: anyLength, bottom: anyLength }),
);

const FIELDS = ['opening', 'top', 'bottom', 'count', 'pitch', 'gap', 'width', 'level', 'sewn'];
const say = { field: (key: string) => key, length: (x: number) => `${toMm(exactLength(x))} mm` };

function isSound(plan: ClosurePlan): boolean {
  const numbers = [
    plan.ends.top,
    plan.ends.bottom,
    plan.gap ?? 0,
    plan.remainder?.above ?? 0,
    plan.remainder?.below ?? 0,
    plan.level?.off ?? 0,
    ...plan.stretches.flatMap(({ pitch, spaces }) => [pitch, spaces]),
    ...plan.run.marks.map(({ at }) => at),
  ];
  const spaces = plan.stretches.reduce((sum, stretch) => sum + stretch.spaces, 0);
  return (
    numbers.every(Number.isFinite) &&
    plan.count === plan.run.marks.length &&
    spaces === plan.count - 1 &&
    plan.run.marks.every(({ at }, i) => i === 0 || at > plan.run.marks[i - 1]!.at)
  );
}

describe('nonsense', () => {
  test('always an answer in order or a problem with a field and words, never NaN', () => {
    let [tried, answers] = [0, 0];
    fc.assert(
      fc.property(anything, (input) => {
        tried++;
        const outcome = spaceClosures(input as ClosuresInput);
        if (outcome.ok) {
          answers++;
          expect(isSound(outcome.value)).toBe(true);
          expect(outcome.value.run.marks.length).toBeLessThanOrEqual(2000);
        } else {
          for (const problem of outcome.problems) {
            expect(FIELDS).toContain(problem.field);
            expect(problemWords(problem, say)).not.toMatch(/NaN|Infinity|undefined/);
          }
        }
      }),
      { numRuns: 3000 },
    );
    expect(answers).toBeGreaterThan(tried / 30);
  });

  test('the least pitch that is named does work', () => {
    const close = fc.record({
      ...sensible,
      ends: someEnds,
      level: maybe(typed(100, 200)),
      sewn: maybe(fc.uniqueArray(typed(0, 99), { maxLength: 5 })),
      by: fc.constantFrom('widest', 'exact'),
    });
    fc.assert(
      fc.property(close, ({ by, ...edge }) => {
        const at = (pitch: Length) =>
          spaceClosures({ ...edge, rule: { by, pitch } } as ClosuresInput);
        const refusal = at(length(1));
        if (refusal.ok || refusal.problems[0].kind !== 'too-close') return;
        const mended = at(length(Math.ceil(refusal.problems[0].least)));
        // A level nearer to an edge than that is refused for itself, by whatever pitch.
        const others = mended.ok ? [] : mended.problems.map(({ field }) => field);
        expect(others.filter((field) => field !== 'level')).toEqual([]);
      }),
    );
  });
});
