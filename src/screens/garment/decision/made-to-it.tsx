import { garmentOrderWords as words } from '#words/garment/garment-order-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { Refused, State } from '../../../garment/actions/state.ts';
import { undo } from '../../../garment/actions/undo.ts';
import { conflictSaid } from '../said/told-words.ts';
import css from './made-to-it.css?inline';

adopt(css);

interface Props {
  state: State;
  bench: Bench;
  asks: Extract<Refused, { why: 'made to it' }>;
  onUndo: () => void;
  onLeave: () => void;
}

/** A change that something was made to: what would be otherwise than asked without it, before it is taken back. */
export function MadeToIt({ state, bench, asks, onUndo, onLeave }: Props) {
  const { homes, change } = asks;
  const without = undo(state, change, { now: state.record.changed, sure: true }).state.answer;
  const conflicts = without.conflicts.filter(({ home }) => homes.includes(home));
  return (
    <section class="made-to-it" role="alertdialog" aria-label={words.madeTo} data-hand={bench.hand}>
      <h2>{words.madeTo}</h2>
      <ul>
        {conflicts.map((one) => (
          <li key={one.home}>
            <Rich text={conflictSaid({ answer: without, bench }, one)} />
          </li>
        ))}
      </ul>
      <div>
        <button type="button" class="plain main" onClick={onLeave}>
          {words.leave}
        </button>
        <button type="button" class="plain" onClick={onUndo}>
          {words.undoAll}
        </button>
      </div>
    </section>
  );
}
