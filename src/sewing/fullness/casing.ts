import { type Length, length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import { OPENING_MORE, PATCH_LONG } from '../sources/elastic.ts';

/** A casing turned down for an elastic, its measures from the fold down. */
export interface CasingInput {
  /** Of the elastic, and how thick it is. */
  width: Length;
  thick: Length;
  /** How much wider than it the casing is, clear between its stitch lines. */
  ease: Length;
  /** Turned in first, so that no raw edge shows. */
  turn: Length;
  /** From the inner fold to the stitch line below. */
  edge: Length;
  /** From the upper fold to a stitch line above the elastic: nothing where there is none. */
  header: Length;
}

export interface Casing {
  /** Clear between the stitch lines, or the fold and one. */
  clear: Length;
  /** The stitch line below the elastic, from the upper fold. */
  stitch: Length;
  /** What is turned down, without the first turn. */
  depth: Length;
  /** With it: what is added above the fold. */
  allowance: Length;
  /** Left open to thread it. */
  opening: Length;
  /** Under ends that are butted: so long, as wide as the elastic. */
  patch: Length;
}

/**
 * A casing with room for its elastic: clear is width + ease, stitched below at header + clear, turned
 * down by that and the edge, cut with the first turn beside. Ease is at least what the elastic is thick:
 * it has to turn in there (derived here). The opening and the patch are published (`sources/elastic.ts`).
 *
 * Problems: an elastic of no width, anything less than nothing, ease under its thickness.
 */
export function casing(input: CasingInput): Outcome<Casing> {
  return answerUnless(casingProblems(input), () => {
    const { width, ease, turn, edge, header } = input;
    const clear = length(width + ease);
    const stitch = length(header + clear);
    const depth = length(stitch + edge);
    return {
      ok: true,
      value: {
        ...{ clear, stitch, depth },
        allowance: length(depth + turn),
        opening: length(width + OPENING_MORE.value),
        patch: length(PATCH_LONG.value * width),
      },
    };
  });
}

function casingProblems({ width, thick, ease, turn, edge, header }: CasingInput): Problem[] {
  const alone = [
    ...mustBePositive('width', width),
    ...mustNotBeNegative('thick', thick),
    ...mustNotBeNegative('ease', ease),
    ...mustNotBeNegative('turn', turn),
    ...mustNotBeNegative('edge', edge),
    ...mustNotBeNegative('header', header),
  ];
  if (alone.length > 0 || ease >= thick) return alone;
  return [{ kind: 'too-short', field: 'ease', least: thick, given: ease }];
}
