import { type ExactLength, exactLength, LONGEST, length } from '../../lengths/length.ts';
import { placeProblems } from '../followed-places.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';
import type { Buttonhole, ButtonholeInput } from './buttonhole.ts';
import { MOST_CLOSURES } from './closure-input.ts';

/**
 * A row of buttonholes at the places of another row, of buttons or marks: across the edge each lies at its
 * place, along it each begins above its place by what lies above the button, so that the button sits there.
 *
 * Problems name `follow`: no place, more than a row has, places past the zero they are measured from, two at
 * one place, holes that run into each other.
 *
 * @param places from the same zero, in order
 */
export function buttonholeRow(
  { past, length: long }: Buttonhole,
  direction: ButtonholeInput['direction'],
  places: readonly ExactLength[],
): Outcome<Run> {
  const above = direction === 'vertical' ? past : exactLength(0);
  const room = { least: above, most: LONGEST, count: MOST_CLOSURES };
  const problems = [
    ...placeProblems(places, room),
    ...(direction === 'vertical' ? closeProblems(places, long) : []),
  ];
  return answerUnless(problems, () => {
    const starts = places.map((at) => exactLength(at - above));
    const end = Math.max(...starts) + (direction === 'vertical' ? long : 0);
    return {
      ok: true,
      value: {
        datum: 'zero',
        length: length(Math.ceil(end)),
        marks: starts.map((at, i) => ({ at, label: String(i + 1), kind: 'closure' })),
      },
    };
  });
}

/** Along the edge one hole has to end before the next begins. */
function closeProblems(places: readonly ExactLength[], long: ExactLength): Problem[] {
  const steps = places.slice(1).map((at, i) => at - (places[i] ?? at));
  const least = Math.min(...steps);
  return least > long || steps.length === 0
    ? []
    : [
        {
          kind: 'overlap',
          field: 'follow',
          given: length(Math.ceil(long)),
          pitch: exactLength(least),
        },
      ];
}
