import { type ExactLength, exactLength, type Length, length, ZERO } from '../lengths/length.ts';
import { type ClosuresInput, MOST_CLOSURES } from './closure-input.ts';
import type { Layout, Stretch } from './closure-row.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';

/** Spaces that differ by no more are one pitch, in 1/8000 mm: what dividing leaves. */
const NOISE = 0.01;

/** The row that has the places of another one. Problems name `follow` where one can't be on this opening. */
export function followedRow(
  { opening, width }: ClosuresInput,
  places: readonly ExactLength[],
): Outcome<Layout> {
  const problems = [
    ...mustBePositive('opening', opening),
    ...(width === undefined ? [] : mustBePositive('width', width)),
    ...placeProblems(opening, places),
  ];
  return answerUnless(problems, () => ({
    ok: true,
    value: {
      places: places.map((at) => ({ at, kind: 'closure' })),
      stretches: stretchesOf(places),
    },
  }));
}

function placeProblems(opening: Length, places: readonly ExactLength[]): Problem[] {
  const field = 'follow';
  const given = places.length;
  if (given === 0) return [{ kind: 'too-few', field, least: 1, given }];
  if (given > MOST_CLOSURES) return [{ kind: 'too-many', field, most: MOST_CLOSURES, given }];
  const off = places.find((at) => at < -NOISE || at > opening + NOISE);
  if (off !== undefined) {
    return [{ kind: 'outside', field, given: length(Math.round(off)), least: ZERO, most: opening }];
  }
  const twice = places.find((at, i) => i > 0 && at - (places[i - 1] ?? at) <= NOISE);
  return twice === undefined ? [] : [{ kind: 'twice', field, given: length(Math.round(twice)) }];
}

/** Neighbouring spaces of one pitch, from the top. */
function stretchesOf(places: readonly ExactLength[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (const [i, at] of places.slice(1).entries()) {
    const pitch = exactLength(at - (places[i] ?? at));
    const last = stretches.at(-1);
    if (last && Math.abs(last.pitch - pitch) <= NOISE) last.spaces += 1;
    else stretches.push({ spaces: 1, pitch, asMade: false });
  }
  return stretches;
}
