import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { Action } from '../../../garment/actions/act.ts';
import { at } from '../../../garment/actions/slots.ts';
import type { Change, State } from '../../../garment/actions/state.ts';
import { lastPress } from '../../../garment/actions/undo.ts';
import type { Fact } from '../../../garment/record/record.ts';
import { numberAt } from '../said/say.ts';

interface Props {
  state: State;
  bench: Bench;
  /** How much is not on the disk yet. */
  waiting: number;
  /** What went wrong, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain: (() => void) | undefined;
  onAct: (action: Action) => void;
}

/** What was pressed last, with the way back, until the next press; and what went wrong. */
export function LastPress({ state, bench, waiting, said, onAgain, onAct }: Props) {
  const last = lastPress(state);
  if (!last && said === undefined) return null;
  return (
    <div class="last">
      {said !== undefined && (
        <p class="warning" role="alert">
          {said}
        </p>
      )}
      {onAgain && <p>{garmentWords.waiting(waiting)}</p>}
      {(onAgain || last) && (
        <p>
          {onAgain ? (
            <button type="button" onClick={onAgain}>
              {garmentWords.tryNow}
            </button>
          ) : (
            last && <Rich text={waiting > 0 ? words.keeping : pressSaid(state, last, bench)} />
          )}
          {last && (
            <>
              {' · '}
              <button
                type="button"
                onClick={() => onAct({ do: 'undo', change: last.id, now: Date.now() })}
              >
                {words.backOne}
              </button>
            </>
          )}
        </p>
      )}
    </div>
  );
}

/** What a press did, in a few words. */
function pressSaid({ record, answer }: State, { edits }: Change, bench: Bench): string {
  const one = edits.find(({ slot }) => slot[0] === 'facts');
  const fact = one && (at(record, one.slot.slice(0, 2)) as Partial<Fact> | undefined);
  if (!one || !fact?.home) return words.justTaken;
  const { home, shown, measured } = fact;
  const number = measured ?? shown;
  if (number === undefined) return words.justBefore;
  const text = numberAt(answer, home, number, bench);
  return one.slot.length > 2 ? words.justMeasured(text) : words.justMade(text);
}
