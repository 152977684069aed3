import { bindingWords as words } from '#words/calculations/binding-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { bindingAnswer } from './answer.ts';
import { bindingFields } from './fields.ts';
import { bindingOf } from './worked.ts';

/** A strip that finishes an edge, or is sewn into a seam: how wide it is cut, and how long it is. */
export const binding: Calculation = {
  id: 'binding',
  title: words.title,
  ...bindingFields.asked,
  beside: [{ id: 'bias', label: words.beside, carry: toBias }],
  work(draft, bench) {
    const read = bindingFields.read(draft, bench);
    if (!read.ok) return read;
    const found = bindingOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: bindingAnswer(read.value, found.value, bench) };
  },
};

/** The strip as it is cut, and how much of it is needed: both no less than they are. */
function toBias(draft: Draft, bench: Bench): Draft | undefined {
  const read = bindingFields.read(draft, bench);
  if (!read.ok) return undefined;
  const found = bindingOf(read.value);
  if (!found.ok) return undefined;
  const { width, long } = found.value;
  return {
    width: onTape(width.cut, bench, upToGraduation),
    ...(long && { need: onTape(long.long, bench, upToGraduation) }),
  };
}
