import { type Cord, type CordInput, cord } from '../../sewing/fullness/cord.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type CordAsked, cordInput } from './fields.ts';

/** A drawstring as it was worked out, with what was asked. */
export interface Corded {
  asked: CordAsked;
  input: CordInput;
  plan: Cord;
}

/** All that is asked of a drawstring, or every reason why not. */
export function corded(asked: CordAsked): Outcome<Corded> {
  const input = cordInput(asked);
  return mapped(cord(input), (plan) => ({ asked, input, plan }));
}
