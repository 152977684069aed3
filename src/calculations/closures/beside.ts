import { closuresWords as words } from '#words/calculations/closures-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { exactLength, ZERO } from '../../lengths/length.ts';
import { otherSetBack } from '../../sewing/pieces/other-side.ts';
import type { Problem } from '../../sewing/problem.ts';
import { HOOK_SET_BACK_EIGHTH, HOOK_SET_BACK_QUARTER } from '../../sewing/sources/hooks.ts';
import type { ClosuresAsked, Item } from './fields.ts';

/** What is said beside the row: what is placed, the caution for it, the other side. */
export interface Beside {
  item: (typeof words.items)[Item];
  lines: readonly Line[];
  caution: string;
  /** How much further down the row lies than the one it follows, in 1/8000 mm. */
  offset: number;
  problems: readonly Problem[];
  sources: readonly string[];
}

/** Everything beside the row itself, from the fields that are shown. */
export function besideRow(asked: ClosuresAsked, bench: Bench): Beside {
  const { item, side } = asked;
  const caution = item === 'tie' ? cautionWords.cords : cautionWords.smallParts;
  const nothing = {
    item: words.items[item],
    offset: asked.offset,
    lines: [],
    caution,
    problems: [],
    sources: [],
  };
  if (side === 'none') return nothing;
  const { setBack } = needed({ setBack: asked.setBack });
  const { lap } = side === 'lap' ? needed({ lap: asked.lap }) : { lap: ZERO };
  const other = otherSetBack({ setBack, lap });
  if (!other.ok) return { ...nothing, problems: other.problems };
  const across = byTape(exactLength(Math.abs(other.value)), bench);
  const meets = side === 'meet';
  return {
    ...nothing,
    lines: [
      { label: words.thisSide, value: words.setBackFrom(byTape(setBack, bench)) },
      {
        label: words.otherSide,
        value: other.value < 0 ? words.projects(across) : words.setBackFrom(across),
      },
    ],
    sources: meets ? [words.setBackSources(HOOK_SET_BACK_EIGHTH, HOOK_SET_BACK_QUARTER)] : [],
  };
}
