import { garmentMadeWords as words } from '#words/garment-made-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { adopt } from '../../controls/adopt.ts';
import { Rich } from '../../controls/rich.tsx';
import type { KeptRun } from '../../garment/garment.ts';
import { type MadeElsewhere, madeElsewhere } from '../../garment/made-elsewhere.ts';
import { exactLength } from '../../lengths/length.ts';
import css from './made-list.css?inline';

adopt(css);

/** Planned beside as made, for every mark that has an as-made number. */
export function MadeList({ runs, bench }: { runs: readonly KeptRun[]; bench: Bench }) {
  return (
    <div class="made">
      {runs.map((run, i) => {
        const marks = madeElsewhere(run);
        if (marks.length === 0) return null;
        return (
          <section key={i}>
            {runs.length > 1 && <h4>{words.runOf(i + 1)}</h4>}
            <dl>
              {marks.map((mark) => (
                <div key={mark.label}>
                  <dt>{words.mark(mark.label)}</dt>
                  {partsOf(mark, bench).map((part) => (
                    <dd key={part}>
                      <Rich text={part} />
                    </dd>
                  ))}
                </div>
              ))}
            </dl>
          </section>
        );
      })}
    </div>
  );
}

function partsOf({ planned, made, typed }: MadeElsewhere, bench: Bench): string[] {
  const show = (units: number) => exactly(exactLength(units), bench);
  const plan = planned === undefined ? words.notPlanned : words.planned(show(planned));
  if (made === undefined) return [plan, words.asTyped(typed)];
  if (planned === undefined) return [plan, words.asMade(show(made))];
  const off = made - planned;
  return [plan, words.asMade(show(made)), words.off(off, show(Math.abs(off)))];
}
