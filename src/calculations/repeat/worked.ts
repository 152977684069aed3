import { needed } from '../../calculation/needed.ts';
import type { ExactLength } from '../../lengths/length.ts';
import {
  centred,
  type Match,
  matchAt,
  type Panels,
  panels,
  repeatOf,
  type Slanted,
  slanted,
} from '../../sewing/cloth/repeat.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import {
  centreInput,
  matchInput,
  type PANEL_FIELDS,
  type RepeatAsked,
  slantInput,
} from './fields.ts';

/** Cloth with a repeat as it was worked out: of its kind. */
export type Worked = { asked: RepeatAsked; repeat: ExactLength } & (
  | { kind: 'panels'; panels: Panels; count: number; long: ExactLength }
  | { kind: 'match'; match: Match }
  | { kind: 'centre'; inside: ExactLength; repeats: number }
  | { kind: 'slant'; slant: Slanted }
);

/** The panels that are asked for. */
export function panelsOf(
  asked: Pick<RepeatAsked, (typeof PANEL_FIELDS)[number]>,
  begun?: number,
): Outcome<Panels> {
  const all = needed({ panels: asked.panels, long: asked.long });
  return panels(asked, begun ?? all.panels, all.long);
}

/** All that is asked of cloth with a repeat, or every reason why not. */
export function repeatWorked(asked: RepeatAsked): Outcome<Worked> {
  const { kind } = asked;
  const both = () => ({ asked, repeat: repeatOf(asked) });
  switch (kind) {
    case 'panels':
      return mapped(panelsOf(asked), (found) => {
        const { panels: count, long } = needed({ panels: asked.panels, long: asked.long });
        return { ...both(), kind, panels: found, count, long };
      });
    case 'match':
      return mapped(matchAt(matchInput(asked)), (match) => ({ ...both(), kind, match }));
    case 'centre':
      return mapped(centred(centreInput(asked)), (found) => ({ ...both(), kind, ...found }));
    case 'slant':
      return mapped(slanted(slantInput(asked)), (slant) => ({ ...both(), kind, slant }));
  }
}
