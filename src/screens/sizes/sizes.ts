import type { Bench } from '../../controls/bench.ts';
import type { Answer, Calculation, Draft, Field } from '../../controls/calculation.ts';
import { type DraftReader, readDraft } from '../../controls/draft.ts';
import { numberOf } from '../../controls/draft-numbers.ts';
import { refusedFor } from '../../controls/problem-faults.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { sizesWords as words } from '../../words/sizes-words.ts';
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
  fields: (draft) => [...OWN[whatOf(draft)], choice('what', words.whatLabel, words.what)],
  work(draft, bench) {
    const what = whatOf(draft);
    const read = readDraft(draft, bench);
    const outcome = ANSWERS[what](read, bench);
    if (!outcome) return { ok: false, faults: read.faults };
    if (outcome.ok) return { ok: true, answer: outcome.value };
    const problems = outcome.problems.map((problem) => ({ ...problem, field: what }));
    return refusedFor(problems);
  },
};

type What = keyof typeof words.what;

/** The fields of each kind; the number is first and has the kind's own name. */
const OWN: Readonly<Record<What, readonly Field[]>> = {
  stitch: [
    { kind: 'number', key: 'stitch', label: words.what.stitch },
    choice('stitchBy', words.byLabel, words.stitchBy),
  ],
  button: [{ kind: 'length', key: 'button', label: words.what.button }],
  needle: [
    { kind: 'number', key: 'needle', label: words.what.needle },
    choice('needleBy', words.byLabel, words.needleBy),
  ],
};

function choice(key: string, label: string, options: Readonly<Record<string, string>>): Field {
  const named = Object.entries(options).map(([value, name]) => ({ value, label: name }));
  return { kind: 'choice', key, label, options: named };
}

function whatOf(draft: Draft): What {
  const what = draft.what ?? '';
  return Object.hasOwn(OWN, what) ? (what as What) : 'stitch';
}

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
  needle: (read) => {
    const given = numberOf(read, 'needle');
    return given === undefined ? undefined : needleAnswer(given, read.text('needleBy'));
  },
};
