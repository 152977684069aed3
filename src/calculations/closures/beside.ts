import { cautionWords } from '#words/caution-words.ts';
import { closuresWords as words } from '#words/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Draft, Line } from '../../calculation/calculation.ts';
import type { DraftReader } from '../../calculation/draft.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { exactLength, ZERO } from '../../lengths/length.ts';
import { otherSide } from '../../sewing/other-side.ts';
import type { Problem } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { HOOK_SET_BACK_EIGHTH, HOOK_SET_BACK_QUARTER } from '../../sewing/sources/hooks.ts';
import { itemOf, sideOf } from './fields.ts';

/** What is said beside the row: the other side, the caution for what is placed. */
export interface Beside {
  lines: readonly Line[];
  caution: string;
  problems: readonly Problem[];
  sources: readonly string[];
}

const NO_RUN: Run = { datum: 'top-edge', length: ZERO, marks: [] };

/** Everything beside the row itself, from the fields that are shown. */
export function besideRow(read: DraftReader, draft: Draft, bench: Bench): Beside {
  const caution = itemOf(draft) === 'tie' ? cautionWords.cords : cautionWords.smallParts;
  const nothing: Beside = { lines: [], caution, problems: [], sources: [] };
  const chosen = sideOf(draft);
  const setBack = chosen === 'none' ? undefined : read.length('setBack');
  const lap = chosen === 'lap' ? read.length('lap') : ZERO;
  if (setBack === undefined || lap === undefined) return nothing;
  const other = otherSide(NO_RUN, { setBack, lap });
  if (!other.ok) return { ...nothing, problems: other.problems };
  const across = byTape(exactLength(Math.abs(other.value.setBack)), bench);
  const meets = chosen === 'meet';
  return {
    ...nothing,
    lines: [
      { label: words.thisSide, value: words.setBackFrom(byTape(setBack, bench)) },
      {
        label: words.otherSide,
        value: other.value.setBack < 0 ? words.projects(across) : words.setBackFrom(across),
      },
    ],
    sources: meets ? [words.setBackSources(HOOK_SET_BACK_EIGHTH, HOOK_SET_BACK_QUARTER)] : [],
  };
}
