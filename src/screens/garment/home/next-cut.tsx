import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import { type Next, nextCut } from '../../../garment/next/next.ts';
import { openBefore } from '../../../garment/work-out/before-cut.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { workOf } from '../said/say.ts';
import { OpenNumbers } from './open-numbers.tsx';

interface Props {
  answer: Answer;
  next: Next;
  bench: Bench;
  onAct: (action: Action) => void;
}

/** What must be decided before the next cut, while that is more than a step away: the key asks of its own. */
export function BeforeNextCut({ answer, next, bench, onAct }: Props) {
  const [shows, setShows] = useState(false);
  const isCutNow = next.kind === 'step' && !next.step.step.undoable;
  const cut = isCutNow ? undefined : nextCut(answer, next);
  const open = cut ? openBefore(answer, cut.home) : [];
  if (!cut || open.length === 0) return null;
  return (
    <section class="before-cut">
      <button type="button" aria-expanded={shows} onClick={() => setShows(!shows)}>
        {words.beforeCut(workOf(answer, cut.home), open.length)}
      </button>
      {shows && <OpenNumbers {...{ answer, open, bench, onAct }} />}
    </section>
  );
}
