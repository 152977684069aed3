import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { NOISE, placeProblems } from '../followed-places.ts';
import { mustBePositive, mustBePositiveIfGiven } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { type ClosuresInput, MOST_CLOSURES } from './closure-input.ts';
import type { Layout, Stretch } from './closure-row.ts';

/** The row that has the places of another one. Problems name `follow` where one can't be on this opening. */
export function followedRow(
  { opening, width }: ClosuresInput,
  places: readonly ExactLength[],
): Outcome<Layout> {
  const problems = [
    ...mustBePositive('opening', opening),
    ...mustBePositiveIfGiven('width', width),
    ...placeProblems(places, { least: ZERO, most: opening, count: MOST_CLOSURES }),
  ];
  return answerUnless(problems, () => ({
    ok: true,
    value: {
      places: places.map((at) => ({ at, kind: 'closure' })),
      stretches: stretchesOf(places),
    },
  }));
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
