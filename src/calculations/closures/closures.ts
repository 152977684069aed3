import { closuresWords as words } from '#words/calculations/closures-words.ts';
import type { partsWords } from '#words/calculations/parts-words.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import type { Typed } from '../../calculation/schema.ts';
import { spaceClosures } from '../../sewing/closures/closures.ts';
import { closuresAnswer } from './answer.ts';
import { besideRow } from './beside.ts';
import { type ClosuresTyped, closureFields } from './fields.ts';
import { closuresInput } from './input.ts';

const { opening, by, gap } = closureFields.specs;

/** Hooks, buttons, snaps or ties along an opening. */
export const closures: Calculation = {
  id: 'closures',
  title: words.title,
  ...closureFields.asked,
  work(draft, bench) {
    const read = closureFields.read(draft, bench);
    if (!read.ok) return read;
    const input = closuresInput(read.value);
    const beside = besideRow(read.value, bench);
    const outcome = spaceClosures(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    if (beside.problems.length > 0) {
      return refusedFor(beside.problems);
    }
    return { ok: true, answer: closuresAnswer(outcome.value, input, draft, bench, beside) };
  },
  beside: [
    { id: 'buttonhole', label: words.buttonhole },
    {
      id: 'parts',
      label: words.parts,
      carry: (draft) =>
        ({
          length: closureFields.asks(draft)(opening),
          round: 'open',
        }) satisfies Typed<typeof partsWords.labels>,
    },
  ],
  around: (draft, made, count) => ({ ...draft, ...typedAround(draft, made, count) }),
};

function typedAround(draft: Draft, made: readonly string[], count: number): ClosuresTyped {
  const ask = closureFields.asks(draft);
  // What is spaced anew follows no row any more.
  const typed: ClosuresTyped = {
    sewn: made.join('; '),
    by: 'count',
    count: String(count),
    follow: '',
  };
  // A clear gap that was asked for is still the least; the number is what is kept now.
  return by.is('gap')(ask) ? { ...typed, leastGap: ask(gap) } : typed;
}
