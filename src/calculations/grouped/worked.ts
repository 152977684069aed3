import { needed } from '../../calculation/needed.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { type BandEnd, bandEnd, overFold } from '../../sewing/bands/band-end.ts';
import { type Groups, grouped } from '../../sewing/closures/grouped.ts';
import { hanger, type Loops, loops } from '../../sewing/closures/loops.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { foldInput, type GroupedAsked, groupsInput, lapInput, loopsInput } from './fields.ts';

/** A closing as it was worked out: of its kind. */
export type Worked = { asked: GroupedAsked } & (
  | { kind: 'groups'; groups: Groups }
  | { kind: 'lap'; end: BandEnd }
  | { kind: 'loops'; loops: Loops }
  | { kind: 'hanger'; tape: ExactLength }
  | { kind: 'fold'; apart: ExactLength }
);

/** All that is asked of a closing, or every reason why not. */
export function groupedOf(asked: GroupedAsked): Outcome<Worked> {
  const { kind } = asked;
  switch (kind) {
    case 'groups':
      return mapped(grouped(groupsInput(asked)), (groups) => ({ asked, kind, groups }));
    case 'lap':
      return mapped(bandEnd(lapInput(asked)), (end) => ({ asked, kind, end }));
    case 'loops':
      return mapped(loops(loopsInput(asked)), (found) => ({ asked, kind, loops: found }));
    case 'hanger': {
      const { drop, seam } = needed({ drop: asked.drop, seam: asked.seam });
      return mapped(hanger(drop, seam), (tape) => ({ asked, kind, tape }));
    }
    case 'fold':
      return mapped(overFold(foldInput(asked)), (apart) => ({ asked, kind, apart }));
  }
}
