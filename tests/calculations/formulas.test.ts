import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { benchOf } from '../controls/helpers.ts';
import { timesTried } from '../thorough.ts';
import { draftsNear, EVERY } from './any-drafts.ts';
import { agree, bothSides, equationsOf, NotRead } from './formula-value.ts';

const benches = fc
  .record({
    unit: fc.constantFrom('cm' as const, 'mm' as const, 'in' as const),
    decimalMark: fc.constantFrom('.' as const, ',' as const),
    metric: fc.constantFrom('1mm' as const, '0.5mm' as const),
    inch: fc.constantFrom('1/8in' as const, '1/32in' as const),
  })
  .map(benchOf);

/** Rules in words with an equals sign, and why there are no numbers in them. */
const IN_WORDS: readonly (readonly [RegExp, string])[] = [
  [/^bias strip = /, 'what a published rule says, restated: it is for any allowance'],
];

/** Every equation an answer shows; none where there is no answer. */
function equationsIn(calculation: Calculation, draft: Draft, bench: Bench): string[] | undefined {
  const work = calculation.work(draft, bench);
  if (!work.ok) return undefined;
  return work.answer.workings.flatMap(({ formula }) => equationsOf(formula));
}

function wrongOf(equation: string): string[] {
  if (IN_WORDS.some(([words]) => words.test(equation))) return [];
  try {
    return agree(bothSides(equation)) ? [] : [`wrong: ${equation}`];
  } catch (why) {
    if (why instanceof NotRead) return [`not read: ${equation} (${why.message})`];
    throw why;
  }
}

test.each(EVERY)('every formula $id shows gives the number it shows', (calculation) => {
  const numRuns = timesTried(1500);
  let [answers, shown] = [0, 0];
  fc.assert(
    fc.property(draftsNear(calculation), benches, (set, bench) => {
      const draft = { ...calculation.start(bench), ...set };
      const equations = equationsIn(calculation, draft, bench);
      answers += equations ? 1 : 0;
      shown += equations?.length ?? 0;
      expect(equations?.flatMap(wrongOf) ?? []).toEqual([]);
    }),
    { numRuns, seed: 12 },
  );
  expect(answers).toBeGreaterThan(numRuns / 10);
  // Crossing strips are tried place by place: there is a rule in words and no formula.
  if (calculation.id !== 'crossing') expect(shown).toBeGreaterThan(numRuns / 15);
});

// What the evaluator takes for right and wrong, worked by hand.
describe('the evaluator', () => {
  test.each([
    '(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 spaces = 7.1 cm',
    '18 1/4 in − 3/4 in = 17 1/2 in, left',
    '15,24 mm ÷ 40 = 0,381 mm each',
    '2 × (15 mm + 40 mm × cos 90°) ÷ sin 90° = 30 mm along the bottom',
    '2 × 20 mm ÷ 425 mm = 9.4 %',
    '1 in ÷ 3 = 0.847 cm',
    '10 cm − 3 × 3.333 cm = 0 cm',
    '27 ÷ 2 = 13.5, so between',
  ])('%s', (equation) => {
    expect(agree(bothSides(equation))).toBe(true);
  });

  test.each([
    '(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 spaces = 7.11 cm',
    '10 cm − 3 × 3.333 cm = 0.01 cm',
    '5/8 in = 15.8 mm',
    '1 in × 25.4 mm = 25.4 mm',
    '20 mm ÷ 8 = 2',
  ])('not %s', (equation) => {
    expect(agree(bothSides(equation))).toBe(false);
  });

  test.each(['about 3 cm = 3 cm', '3 cm = 3 cm = 3 cm', '(3 cm = 3 cm'])(
    'cannot read %s',
    (equation) => {
      expect(() => bothSides(equation)).toThrow(NotRead);
    },
  );
});
