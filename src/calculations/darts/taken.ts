import { mapped, type Outcome } from '../../sewing/problem.ts';
import {
  type Darts,
  type DartsInput,
  darts,
  type LevelIntake,
  levelIntakes,
} from '../../sewing/shaping/darts.ts';
import { type DartsAsked, dartsInput, type Taker, takersOf } from './fields.ts';

/** What seams and darts take, as it was worked out, with what was asked. */
export interface Taken {
  asked: DartsAsked;
  input: DartsInput;
  /** In the order of its kinds. */
  takers: readonly Taker[];
  plan: Darts;
  levels: readonly LevelIntake[];
}

/** All that is asked of darts, or every reason why not. */
export function taken(asked: DartsAsked): Outcome<Taken> {
  const input = dartsInput(asked);
  const found = darts(input);
  if (!found.ok) return found;
  const plan = found.value;
  return mapped(levelIntakes(input, plan, asked), (levels) => ({
    asked,
    input,
    takers: takersOf(asked),
    plan,
    levels,
  }));
}
