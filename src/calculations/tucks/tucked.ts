import type { TucksInput } from '../../sewing/fullness/tuck-input.ts';
import { type Tucks, tucks } from '../../sewing/fullness/tucks.ts';
import { mustBePositiveIfGiven } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { type TucksAsked, tucksInput } from './fields.ts';

/** Tucks as they were worked out, with what was asked. */
export interface Tucked {
  asked: TucksAsked;
  input: TucksInput;
  plan: Tucks;
}

/** All that is asked of tucks, or every reason why not. */
export function tucked(asked: TucksAsked): Outcome<Tucked> {
  const input = tucksInput(asked);
  const found = tucks(input);
  if (!found.ok) return found;
  return answerUnless(mustBePositiveIfGiven('radius', asked.radius), () => ({
    ok: true,
    value: { asked, input, plan: found.value },
  }));
}
