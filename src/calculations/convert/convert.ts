import { readLengthOf } from '../../calculation/draft.ts';
import { length } from '../../calculation/field-spec.ts';
import type { Paged } from '../../calculation/page.ts';
import { stateOf } from '../../calculation/parted.ts';
import { schema } from '../../calculation/schema.ts';
import { convertAtOnce, isInInches } from './at-once.ts';
import { linesOf, workingOf } from './lines.ts';

/** Its one field, which is asked for and read at once: to tell what is none. */
const { unknown } = schema({ length: convertAtOnce.title }, { length: length({ start: '' }) });

/** Any length in both systems, with its further lines and how it was got. */
export const convert: Paged = {
  ...convertAtOnce,
  part: stateOf,
  work(draft, bench) {
    const work = convertAtOnce.work(draft, bench);
    const faults = unknown(draft);
    if (faults.length > 0) {
      return { ok: false, faults: [...faults, ...(work.ok ? [] : work.faults)] };
    }
    const read = readLengthOf(draft, 'length', bench);
    if (!work.ok || !read.ok) return work;
    const lines = linesOf(read.value, bench);
    const workings = [workingOf(read.value, isInInches(draft.length ?? '', bench), bench)];
    return { ok: true, answer: { ...work.answer, lines, workings } };
  },
};
