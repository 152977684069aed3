import type { Figure } from '../../drawing/figure.ts';
import { seamSection } from '../../drawing/seam-figure.ts';
import { toMm } from '../../lengths/length.ts';
import type { FinishPlan } from '../../sewing/seams/seam-finish.ts';
import type { Finish } from '../../sewing/seams/seam-rows.ts';

/** A finished seam in section. */
export function sectionOf({ rows, consumed }: FinishPlan, finish: Finish): Figure {
  const drawn = rows.map(({ do: what, at }) => ({
    what,
    at: at === undefined ? undefined : toMm(at),
  }));
  return seamSection(finish, drawn, toMm(consumed));
}
