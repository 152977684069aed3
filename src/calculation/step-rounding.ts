import { downToGraduation, toGraduation, upToGraduation } from '../lengths/graduation.ts';
import type { Step } from './output.ts';

/** How the length of a step is put on a tape: what it can't be undone by is never on that side. */
export function roundingOf(step: Pick<Step, 'bound'> | undefined): typeof toGraduation {
  if (step?.bound === 'least') return upToGraduation;
  return step?.bound === 'most' ? downToGraduation : toGraduation;
}
