import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { type Length, length } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { changeAllowance, letOut } from '../../sewing/seam-change.ts';
import { clipCurve } from '../../sewing/seam-clips.ts';
import { finishSeam, leastAllowance, rowProblems, USUAL_ROWS } from '../../sewing/seam-finish.ts';
import type { FinishInput } from '../../sewing/seam-rows.ts';
import { changeAnswer, girthAnswer } from './change-answers.ts';
import { clipAnswer } from './clip-answer.ts';
import type { SeamAsked } from './fields.ts';
import { finishAnswer } from './finish-answer.ts';

type Working = (asked: SeamAsked, bench: Bench) => Outcome<Answer>;

/** How each thing that may be done with a seam allowance is worked out. */
export const WORKS: Readonly<Record<SeamAsked['what'], Working>> = {
  finish: (asked, bench) => {
    const input = finishInput(needed({ given: asked.given }).given, asked);
    return then(finishSeam(input), (plan) => finishAnswer(plan, input, bench));
  },
  change: ({ given: pattern, wanted, seams }, bench) => {
    const input = needed({ pattern, wanted, seams });
    return then(changeAllowance(input), (change) => changeAnswer(change, input, bench));
  },
  girth: (asked, bench) => {
    const { allowance, by, seams } = needed({
      allowance: asked.allowance,
      by: asked.change,
      seams: asked.seams,
    });
    const out = asked.way === 'out';
    const input = finishInput(allowance, asked);
    const least = leastAllowance(input);
    const change = out ? by : length(-by);
    return answerUnless([...mustBePositive('change', by), ...rowProblems(input)], () =>
      then(letOut({ allowance, change, seams, least }), (plan) =>
        girthAnswer(plan, { by, seams, out }, bench),
      ),
    );
  },
  curve: ({ radius, allowance, opening, along }, bench) => {
    const input = { ...needed({ radius, allowance, opening }), along };
    return then(clipCurve(input), (clips) => clipAnswer(clips, input, bench));
  },
};

/** A finish on an allowance; rows that another finish has are the usual ones. */
function finishInput(given: Length, asked: SeamAsked): FinishInput {
  return { finish: asked.finish, given, ...USUAL_ROWS, ...ownRows(asked) };
}

function ownRows({ finish, first, trim, second, under, turn }: SeamAsked): Partial<FinishInput> {
  if (finish === 'french') return needed({ first, trim, second });
  return finish === 'felled' ? needed({ under, turn }) : {};
}

function then<Value>(outcome: Outcome<Value>, say: (value: Value) => Answer): Outcome<Answer> {
  return outcome.ok ? { ok: true, value: say(outcome.value) } : outcome;
}
