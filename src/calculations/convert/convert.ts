import type { Calculation } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { convertAtOnce, isInInches } from './at-once.ts';
import { linesOf, workingOf } from './lines.ts';

/** Any length in both systems, with its further lines and how it was got. */
export const convert: Calculation = {
  ...convertAtOnce,
  work(draft, bench) {
    const work = convertAtOnce.work(draft, bench);
    const read = readDraft(draft, bench);
    const length = read.length('length');
    if (!work.ok || length === undefined) return work;
    const lines = linesOf(length, bench);
    const workings = [workingOf(length, isInInches(read.text('length'), bench), bench)];
    return { ok: true, answer: { ...work.answer, lines, workings } };
  },
};
