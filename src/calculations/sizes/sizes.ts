import { sizesWords as words } from '#words/sizes-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Field } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { numberOf } from '../../calculation/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { buttonAnswer, needleAnswer, stitchAnswer } from './answers.ts';

/** Stitch lengths, button lines and needle sizes, each in the other system. */
export const sizes: Calculation = {
  id: 'sizes',
  title: words.title,
  start: () => ({
    what: 'stitch',
    stitch: '2.5',
    stitchBy: 'mm',
    button: '24 L',
    needle: '80',
    needleBy: 'metric',
  }),
  fields: (draft) => [...OWN[chosen(draft, 'what', words.what)], choice('what', words.what)],
  work(draft, bench) {
    const what = chosen(draft, 'what', words.what);
    const read = readDraft(draft, bench);
    const outcome = ANSWERS[what](read, bench);
    if (!outcome) return { ok: false, faults: read.faults };
    if (outcome.ok) return { ok: true, answer: outcome.value };
    const problems = outcome.problems.map((problem) => ({ ...problem, field: what }));
    return refusedFor(problems);
  },
};

const { length, number, choice } = fieldsCalled(words.labels);

type What = keyof typeof words.what;

/** The fields of each kind; the number is first and has the kind's own name. */
const OWN: Readonly<Record<What, readonly Field[]>> = {
  stitch: [number('stitch'), choice('stitchBy', words.stitchBy)],
  button: [length('button')],
  needle: [number('needle'), choice('needleBy', words.needleBy)],
};

/** Works each kind out; undefined when its number could not be read. */
const ANSWERS: Readonly<
  Record<What, (read: DraftReader, bench: Bench) => Outcome<Answer> | undefined>
> = {
  stitch: (read, bench) => {
    const given = numberOf(read, 'stitch');
    return given === undefined ? undefined : stitchAnswer(given, read.text('stitchBy'), bench);
  },
  button: (read, bench) => {
    const diameter = read.length('button');
    return diameter === undefined ? undefined : buttonAnswer(diameter, bench);
  },
  needle: (read, bench) => {
    const given = numberOf(read, 'needle');
    return given === undefined ? undefined : needleAnswer(given, read.text('needleBy'), bench);
  },
};
