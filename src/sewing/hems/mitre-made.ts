import { type ExactLength, length } from '../../lengths/length.ts';
import type { Outcome } from '../problem.ts';
import { type Mitre, type MitreInput, mitre } from './mitre.ts';

/** Where the folds of a corner meet its edges as pressed, from the raw corner; undefined of one that isn't. */
export interface CornerFolds {
  /** On the bottom edge: the fold of the side hem. */
  bottom?: ExactLength | undefined;
  /** On the side edge: the fold of the bottom hem. */
  side?: ExactLength | undefined;
}

/**
 * The mitre of two hems as they are pressed: a fold that meets the edge at p from the raw
 * corner lies p·sin φ from its own raw edge, and is the fold of a hem so much deeper or less
 * deep (derived here, as in `mitre`). To 1/8000 mm.
 *
 * Problems: those of a mitre, of the hems as pressed.
 */
export function mitreAsPressed(input: MitreInput, folds: CornerFolds): Outcome<Mitre> {
  const plan = mitre(input);
  if (!plan.ok) return plan;
  const { halfFold } = plan.value;
  const sine = Math.sin((input.angle * Math.PI) / 180);
  const deep = (fold: ExactLength) => length(Math.round(fold * sine - halfFold));
  const pressed = {
    ...(folds.bottom === undefined ? {} : { side: deep(folds.bottom) }),
    ...(folds.side === undefined ? {} : { depth: deep(folds.side) }),
  };
  return mitre({ ...input, ...pressed });
}
