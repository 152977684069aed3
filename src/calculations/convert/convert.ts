import { readLengthOf } from '../../calculation/draft.ts';
import type { Paged } from '../../calculation/page.ts';
import { stateOf } from '../../calculation/parted.ts';
import { convertAtOnce, isInInches } from './at-once.ts';
import { linesOf, workingOf } from './lines.ts';

/** Any length in both systems, with its further lines and how it was got. */
export const convert: Paged = {
  ...convertAtOnce,
  part: stateOf,
  work(draft, bench) {
    const work = convertAtOnce.work(draft, bench);
    const read = readLengthOf(draft, 'length', bench);
    if (!work.ok || !read.ok) return work;
    const lines = linesOf(read.value, bench);
    const workings = [workingOf(read.value, isInInches(draft.length ?? '', bench), bench)];
    return { ok: true, answer: { ...work.answer, lines, workings } };
  },
};
