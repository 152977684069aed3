import { facingWords as words } from '#words/facing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { roundIn } from '../../calculation/draft-numbers.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { facedHem } from '../../sewing/hem-facing.ts';
import { facingAnswer } from './answer.ts';
import { facingFields, facingInput } from './fields.ts';

/** A hem finished with a facing, where its curve is too full or too short to be turned up. */
export const facing: Calculation = {
  id: 'facing',
  title: words.title,
  start: startingDraft,
  fields: facingFields,
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const input = facingInput(read, draft);
    if (!input || read.faults.length > 0) return { ok: false, faults: read.faults };
    const outcome = facedHem(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: facingAnswer(input, outcome.value, draft, bench) };
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    depth: scale('4', '40', '1 1/2'),
    kind: 'shaped',
    seam: scale('1', '10', '3/8'),
    turn: scale('0.6', '6', '1/4'),
    edgeStitch: scale('0.2', '2', '1/8'),
    thickness: '',
    radius: '',
    finished: '',
    otherEnd: '',
    left: '',
  };
}
