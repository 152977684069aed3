import { sizesWords as words } from '#words/calculations/sizes-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { buttonAnswer, needleAnswer, stitchAnswer } from './answers.ts';
import { type Sizes, sizesFields } from './fields.ts';
import { ofKind } from './worked.ts';

/** Stitch lengths, button lines and needle sizes, each in the other system. */
export const sizes: Calculation = {
  id: 'sizes',
  title: words.title,
  ...sizesFields.asked,
  work(draft, bench) {
    const read = sizesFields.read(draft, bench);
    if (!read.ok) return read;
    const { what } = read.value;
    const outcome = ofKind(what, ANSWERS[what](read.value, bench));
    return outcome.ok ? { ok: true, answer: outcome.value } : refusedFor(outcome.problems);
  },
};

/** Works each kind out. */
const ANSWERS: Readonly<Record<Sizes['what'], (read: Sizes, bench: Bench) => Outcome<Answer>>> = {
  stitch: (read, bench) =>
    stitchAnswer(needed({ stitch: read.stitch }).stitch, read.stitchBy, bench),
  button: (read, bench) => buttonAnswer(needed({ button: read.button }).button, bench),
  needle: (read, bench) =>
    needleAnswer(needed({ needle: read.needle }).needle, read.needleBy, bench),
};
