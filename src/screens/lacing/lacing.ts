import type { Bench } from '../../controls/bench.ts';
import type { Calculation, Draft, Work } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { roundIn } from '../../controls/draft-numbers.ts';
import { refusedFor } from '../../controls/problem-faults.ts';
import { lace } from '../../sewing/lacing.ts';
import { lacingWords as words } from '../../words/lacing-words.ts';
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
    const outcome = lace(read.value.input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: lacingAnswer(read.value, outcome.value, draft, bench) };
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    kind: 'edge',
    own: '0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front',
    holes: '50',
    pitch: scale('0.8', '8', '5/16'),
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
