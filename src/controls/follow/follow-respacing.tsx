import { useState } from 'preact/hooks';
import { followWords } from '#words/controls/follow-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Calculation, NamedRun } from '../../calculation/calculation.ts';
import { type Made, withRecord } from '../../calculation/made.ts';
import type { PageState } from '../../calculation/page.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { markOut } from '../../sewing/marks.ts';
import { Rich } from '../rich.tsx';

interface Followed {
  calculation: Calculation;
  named: NamedRun;
  made: Made;
  at: number;
  run: number;
  state: PageState;
  bench: Bench;
  onState: (state: PageState) => void;
}

/**
 * Spacing the rest around what is made: offered once something was made elsewhere than
 * planned, and what the new plan warns of, such as what gives way, said from then on.
 */
export function useRespacing({
  calculation,
  named,
  made,
  at,
  run,
  state,
  bench,
  onState,
}: Followed) {
  const [warnings, warn] = useState<readonly string[]>([]);
  const said = warnings.map((warning) => (
    <p class="note warning" role="status" key={warning}>
      <Rich text={warning} />
    </p>
  ));
  const around = calculation.around;
  if (made.size === 0 || !around) return { said, offer: null };
  const respace = () => {
    const { marks } = markOut(named.run, tapeStep(bench));
    const done = marks
      .filter((mark, i) => i < at || made.has(mark.label))
      .map((mark) => made.get(mark.label) ?? onTape(mark.at, bench));
    const spaced = around(state.draft, done, marks.length);
    const work = calculation.work(spaced, bench);
    const anew = work.ok ? work.answer.runs[run]?.run : undefined;
    warn(work.ok ? work.answer.warnings : []);
    // The new plan goes on where the old one had come to.
    const page = { ...state.page, plan: '', made: '' };
    onState({
      draft: spaced,
      page: anew ? withRecord(page, run, anew, { at, made: '' }) : { ...state.page, made: '' },
    });
  };
  const offer = (
    <button type="button" class="main" onClick={respace}>
      {followWords.respace}
    </button>
  );
  return { said, offer };
}
