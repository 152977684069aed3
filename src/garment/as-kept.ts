import type { Calculation, Draft } from '../calculation/calculation.ts';
import { typingOf } from './in-the-way.ts';
import { typedIn } from './kept.ts';

/** A draft as it is once it is kept: what is typed and measured now is what it was opened with. */
export function asKept(calculation: Calculation, draft: Draft): Draft {
  const measured = Object.entries(draft).flatMap(([key, text]) =>
    /^made(-\d+)?$/.test(key) ? [[key.replace('made', 'was'), text]] : [],
  );
  const seen = typingOf(typedIn(calculation, draft));
  return { ...draft, ...Object.fromEntries(measured), seen };
}
