import { lacingWords as words } from '#words/lacing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft, Work } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { roundIn } from '../../calculation/draft-numbers.ts';
import { isGiven } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { lace } from '../../sewing/lacing.ts';
import type { Problem } from '../../sewing/problem.ts';
import { lacingAnswer } from './answer.ts';
import { lacingFields } from './fields.ts';
import { lacingInput } from './read.ts';

/** The lace for a row of holes, and its way through them. */
export const lacing: Calculation = {
  id: 'lacing',
  title: words.title,
  start: startingDraft,
  fields: lacingFields,
  work(draft, bench): Work {
    const read = lacingInput(readDraft(draft, bench), draft);
    if (!read.ok) return read;
    const { input, second } = read.value;
    const outcome = lace(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    const other = second && lace(second);
    if (other && !other.ok) return refusedFor(other.problems.map((one) => ofSecond(one, draft)));
    const laced = { first: outcome.value, second: other?.value };
    return { ok: true, answer: lacingAnswer(read.value, laced, draft, bench) };
  },
};

/** What is wrong with the second row’s own holes is a fault of the fields that are its own. */
function ofSecond(problem: Problem, draft: Draft): Problem {
  const own = problem.field === 'holes' || (problem.field === 'pitch' && isGiven(draft, 'pitch2'));
  return own ? { ...problem, field: `${problem.field}2` } : problem;
}

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    kind: 'edge',
    own: '0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front',
    holes: '50',
    pitch: scale('0.8', '8', '5/16'),
    holes2: '',
    pitch2: '',
    margin: scale('0.5', '5', '3/16'),
    thickness: scale('0.3', '3', '1/8'),
    outside: scale('0.2', '2', '1/16'),
    lace: '',
    start: 'end',
    tail: scale('10', '100', '4'),
    longest: '2 yd',
    step: 'all',
  };
}
