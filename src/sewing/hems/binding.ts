import { type ExactLength, exactLength, type Length, settled, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import { BAND_TURNS } from '../sources/binding.ts';
import { BOUND } from '../sources/seams.ts';
import { foldShare, roundOver } from './hem-folds.ts';

/** Folded in four, or in six; a band sewn on double; a bound seam; piping with a cord, and without. */
export type Finish = 'single' | 'double' | 'band' | 'seam' | 'cord' | 'flat';

/** A strip across; what a finish doesn't ask for is left out. Lengths in 1/8000 mm. */
export interface BindingInput {
  finish: Finish;
  /** Of a binding or band when it is made; of flat piping what shows. */
  width?: Length | undefined;
  /** The seam that is bound, or that the piping is sewn into. */
  seam?: Length | undefined;
  /** Through the cord. */
  cord?: Length | undefined;
  /** Of the strip's cloth, once. */
  thickness: Length;
  /** Of the edge that is bound, all its layers. */
  edgeThick?: Length | undefined;
}

/** How wide a strip is cut: by the rule, and what its thickness takes beside it. */
export interface BindingWidth {
  /** The greater of the two. */
  cut: ExactLength;
  rule: ExactLength;
  /** Less than nothing takes less; the rule is taken then. */
  thick: ExactLength;
}

/** The finishes that go round an edge, as wide on either side of it. */
export function goesRound(finish: Finish): boolean {
  return finish === 'single' || finish === 'double' || finish === 'band';
}

/**
 * How wide a strip is cut: single binding 4, double 6 finished widths (common practice, no source), a
 * band 2 and its turns (`sources/binding.ts`), a bound seam its allowance and a quarter inch
 * (`sources/seams.ts`), piping π × (cord + τ) + 2 seams, flat piping twice what shows and its seam.
 *
 * What thickness adds, measures going to the outside of each fold (derived here): round an edge T a
 * single binding goes over g = T + 2τ and turns in twice, so 0.57 g − 0.43 τ − 0.86 τ; a double one
 * goes over g with two layers and is turned in with both, its own fold once, 1.14 g − 3.87 τ.
 *
 * Problems: a width, seam or cord of nothing, a thickness of less.
 */
export function bindingWidth(input: BindingInput): Outcome<BindingWidth> {
  return answerUnless(widthProblems(input), () => {
    const [rule, thick] = [ruleOf(input), thickOf(input)];
    return { ok: true, value: { cut: exactLength(rule + Math.max(0, thick)), rule, thick } };
  });
}

function ruleOf({ finish, width = ZERO, seam = ZERO, cord = ZERO, thickness }: BindingInput) {
  return exactLength(
    {
      single: 4 * width,
      double: 6 * width,
      band: 2 * width + BAND_TURNS.value,
      seam: seam + BOUND.value.wider,
      cord: Math.PI * (cord + thickness) + 2 * seam,
      flat: 2 * (width + seam),
    }[finish],
  );
}

function thickOf({ finish, thickness, edgeThick = ZERO }: BindingInput): ExactLength {
  const gap = exactLength(edgeThick + 2 * thickness);
  const turn = foldShare(thickness, 0);
  if (finish === 'single') return exactLength(roundOver(gap, thickness) + 2 * turn);
  if (finish !== 'double') return ZERO;
  const both = exactLength(2 * thickness);
  const turned = roundOver(ZERO, both);
  return exactLength(2 * (roundOver(gap, both) + turned) + turn);
}

function widthProblems(input: BindingInput): Problem[] {
  const { finish, width = ZERO, seam = ZERO, cord = ZERO, thickness, edgeThick = ZERO } = input;
  return [
    ...(goesRound(finish) || finish === 'flat' ? mustBePositive('width', width) : []),
    ...(goesRound(finish) ? [] : mustBePositive('seam', seam)),
    ...(finish === 'cord' ? mustBePositive('cord', cord) : []),
    ...mustNotBeNegative('thickness', thickness),
    ...mustNotBeNegative('edgeThick', edgeThick),
  ];
}

/** What a trade rule for a cord's strip leaves for each seam: (rule − π(cord + τ)) ÷ 2. */
export function seamLeft(rule: ExactLength, cord: Length, thickness: Length): ExactLength {
  return settled(exactLength((rule - Math.PI * (cord + thickness)) / 2));
}
