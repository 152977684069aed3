import { exactLength, type Length } from '../lengths/length.ts';
import type { LacingInput } from './lacing-input.ts';
import { hasTwoStrands, type Strand } from './lacing-kinds.ts';
import { type PathParts, partsOf, pathOf } from './lacing-repeat.ts';

/** A lace that goes both ways already has no other start. */
export function fromMiddle({ kind, start }: Pick<LacingInput, 'kind' | 'start'>): boolean {
  return start === 'middle' && !hasTwoStrands(kind);
}

/**
 * Stitches of each half of a row worked from its middle: an odd count has a hole there,
 * an even one a straight run from the hole before to the hole after.
 */
export function halfStitches(holes: number): number {
  return Math.ceil(holes / 2) - 1;
}

/** All straight parts, passes and turns of a row, from its first hole or its middle. */
export function partsOfRow(input: LacingInput, strands: readonly Strand[]): PathParts {
  const { holes, pitch } = input;
  if (!fromMiddle(input)) {
    const walked = strands.map(({ repeat }) => partsOf(pathOf(repeat, holes - 1), pitch));
    return added([FIRST_HOLE, ...walked]);
  }
  const halves = strands.map(({ repeat }) => partsOf(pathOf(repeat, halfStitches(holes)), pitch));
  const between = { straight: pitch, passes: 2, turns: 0 };
  return added([holes % 2 === 1 ? FIRST_HOLE : between, ...halves, ...halves]);
}

/** Through the hole the lace starts in. */
const FIRST_HOLE: PathParts = { straight: exactLength(0), passes: 1, turns: 0 };

function added(parts: readonly PathParts[]): PathParts {
  return {
    straight: exactLength(sum(parts.map(({ straight }) => straight))),
    passes: sum(parts.map(({ passes }) => passes)),
    turns: sum(parts.map(({ turns }) => turns)),
  };
}

/** Those of one pitch, on average over the repeat. */
export function partsOfPitch({ repeat }: Strand, pitch: Length): PathParts {
  const { straight, passes, turns } = partsOf(pathOf(repeat, repeat.advance), pitch);
  const by = repeat.advance;
  return { straight: exactLength(straight / by), passes: passes / by, turns: turns / by };
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
