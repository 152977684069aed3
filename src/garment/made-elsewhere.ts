import { madeOf, placeOf, plannedOf } from './as-made.ts';
import type { KeptRun } from './garment.ts';

/** A mark that was made elsewhere than planned. */
export interface MadeElsewhere {
  label: string;
  /** In 1/8000 mm from the datum; undefined when no plan of it was kept. */
  planned: number | undefined;
  /** The same of what was made; undefined when what was typed can't be read. */
  made: number | undefined;
  /** What was typed. */
  typed: string;
}

/** Every mark made elsewhere, its plan beside it; in the order of the plan. */
export function madeElsewhere(run: KeptRun): MadeElsewhere[] {
  return Object.keys({ ...run.planned, ...run.made }).flatMap((label) => {
    const typed = madeOf(run, label) ?? '';
    if (typed === '') return [];
    return [{ label, planned: plannedOf(run, label), made: placeOf(typed), typed }];
  });
}
