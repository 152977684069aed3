import { edgingWords as words } from '#words/edging-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft, Work } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { roundIn } from '../../calculation/draft-numbers.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { stripHoles } from '../../sewing/strip-holes.ts';
import { joinProblems } from '../../sewing/strip-joined.ts';
import { edgingAnswer } from './answer.ts';
import { edgingFields } from './fields.ts';
import { toCentre, toCrossing, toLacing } from './onward.ts';
import { edgingInput } from './read.ts';

/** An iron has this many teeth at the most; one tooth is an awl. */
const TEETH = { least: 2, most: 30 };

/** The holes along an edging strip. */
export const edging: Calculation = {
  id: 'edging',
  title: words.title,
  start: startingDraft,
  fields: edgingFields,
  beside: [
    { id: 'centre', label: words.count, carry: toCentre },
    { id: 'crossing', label: words.crossing, carry: toCrossing },
    { id: 'lacing', label: words.lacing, carry: toLacing },
  ],
  work(draft, bench): Work {
    const read = readDraft(draft, bench);
    const input = edgingInput(read, draft, bench);
    if (!input) return { ok: false, faults: read.faults };
    const outcome = stripHoles(input.strip);
    if (!outcome.ok) return refusedFor(outcome.problems);
    const { strip, teeth, stock, crossings } = input;
    if (teeth !== undefined && (teeth < TEETH.least || teeth > TEETH.most)) {
      return refusedFor([{ kind: 'out-of-range', field: 'teeth', given: teeth, ...TEETH }]);
    }
    const problems = joinProblems(strip, stock, crossings);
    if (problems.length > 0) return refusedFor(problems);
    return { ok: true, answer: edgingAnswer(input, outcome.value, bench) };
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    length: scale('40', '400', '16'),
    pitch: scale('0.8', '8', '5/16'),
    rows: 'one',
    fit: 'split',
    middle: 'any',
    width: scale('2', '20', '3/4'),
    margin: scale('0.5', '5', '3/16'),
    hole: scale('0.2', '2', '1/16'),
    end: '',
    corners: '',
    angle: '90',
    radius: '',
    teeth: '',
    stock: '',
    crossings: '',
  };
}
