import { needed } from '../../calculation/needed.ts';
import { ZERO } from '../../lengths/length.ts';
import type { ClosuresInput, SpacingRule } from '../../sewing/closures/closure-input.ts';
import { placesOf } from '../../sewing/followed-places.ts';
import type { Run } from '../../sewing/run.ts';
import type { ClosuresAsked } from './fields.ts';

/** What a row is worked out from: the rest of the fields say what is placed, and what lies opposite. */
export const ROW_FIELDS = [
  'opening',
  'count',
  'gap',
  'pitch',
  'top',
  'bottom',
  'by',
  'ends',
  'level',
  'levelBy',
  'sewn',
  'width',
  'leastGap',
  'follow',
  'offset',
] as const satisfies readonly (keyof ClosuresAsked)[];

type RowAsked = Pick<ClosuresAsked, (typeof ROW_FIELDS)[number]>;

/** The row that is asked for. */
export function closuresInput(asked: RowAsked): ClosuresInput {
  const { opening, ends, level, levelBy, sewn, leastGap, top, bottom } = asked;
  if (asked.follow) return following(asked, asked.follow);
  const atEnds = ends === 'given' ? needed({ top, bottom }) : { top: ZERO, bottom: ZERO };
  const rule = ruleOf(asked);
  const width = rule.by === 'gap' ? undefined : asked.width;
  return { opening, ends, ...atEnds, rule, level, levelBy, sewn, width, leastGap };
}

/** The places of another row, from the same edge, each so much further down. */
function following({ opening, offset, width }: RowAsked, run: Run): ClosuresInput {
  return {
    opening,
    ...{ ends: 'given', top: ZERO, bottom: ZERO },
    rule: { by: 'count', count: run.marks.length },
    follow: placesOf(run, offset),
    width,
  };
}

function ruleOf({ by, count, gap, pitch, width }: RowAsked): SpacingRule {
  if (by === 'count') return { by, ...needed({ count }) };
  return by === 'gap' ? { by, ...needed({ gap, width }) } : { by, ...needed({ pitch }) };
}
