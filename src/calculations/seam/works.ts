import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { changeAllowance } from '../../sewing/seams/seam-change.ts';
import { clipCurve } from '../../sewing/seams/seam-clips.ts';
import { finishSeam } from '../../sewing/seams/seam-finish.ts';
import { changeAnswer, girthAnswer } from './change-answers.ts';
import { clipAnswer } from './clip-answer.ts';
import type { SeamAsked } from './fields.ts';
import { finishAnswer } from './finish-answer.ts';
import { clipInput, finishInput, girthChange } from './read.ts';

type Working = (asked: SeamAsked, bench: Bench) => Outcome<Answer>;

/** How each thing that may be done with a seam allowance is worked out. */
export const WORKS: Readonly<Record<SeamAsked['what'], Working>> = {
  finish: (asked, bench) => {
    const input = finishInput(needed({ given: asked.given }).given, asked);
    const { edge } = asked;
    const long = edge === undefined ? [] : mustBePositive('edge', edge);
    return answerUnless(long, () =>
      then(finishSeam(input), (plan) => finishAnswer(plan, input, bench)),
    );
  },
  change: ({ given: pattern, wanted, seams }, bench) => {
    const input = needed({ pattern, wanted, seams });
    return then(changeAllowance(input), (change) => changeAnswer(change, input, bench));
  },
  girth: (asked, bench) =>
    then(girthChange(asked), (plan) => {
      const { by, seams } = needed({ by: asked.change, seams: asked.seams });
      return girthAnswer(plan, { by, seams, out: asked.way === 'out' }, bench);
    }),
  curve: (asked, bench) => {
    const input = clipInput(asked);
    return then(clipCurve(input), (clips) => clipAnswer(clips, input, bench));
  },
};

function then<Value>(outcome: Outcome<Value>, say: (value: Value) => Answer): Outcome<Answer> {
  return outcome.ok ? { ok: true, value: say(outcome.value) } : outcome;
}
