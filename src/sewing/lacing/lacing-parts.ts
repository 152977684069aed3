import { exactLength, type Length } from '../../lengths/length.ts';
import { joiningPath, middleStart, waysOver } from './lacing-halves.ts';
import type { LacingInput } from './lacing-input.ts';
import type { Strand } from './lacing-kinds.ts';
import { type PathParts, partsOf, pathOf } from './lacing-repeat.ts';

/** What a row takes: through where it begins, and each way from there. */
export interface RowParts {
  begun: PathParts;
  /** From the middle, to the first hole and to the last. */
  ways: readonly PathParts[];
}

/** All straight parts, passes and turns of a row, from its first hole or its middle. */
export function partsOfRow(input: LacingInput, strands: readonly Strand[]): RowParts {
  const { pitch } = input;
  const ways = strands.flatMap(({ repeat }) =>
    waysOver(repeat, input).map((path) => partsOf(path, pitch)),
  );
  const start = middleStart(input);
  const [first] = strands;
  if (!start || !first || start.left === start.right) return { begun: THROUGH_ONE, ways };
  return { begun: { ...partsOf(joiningPath(first.repeat, start), pitch), passes: 2 }, ways };
}

/** Through the hole the lace starts in. */
const THROUGH_ONE: PathParts = { straight: exactLength(0), passes: 1, turns: 0 };

export function added(parts: readonly PathParts[]): PathParts {
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
