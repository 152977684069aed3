import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { State } from '../../../garment/actions/state.ts';
import { hangsOn } from '../../../garment/actions/works.ts';
import { workName } from '../said/names.ts';
import { slotName } from '../said/refused-words.ts';
import type { Do } from './use-typing.ts';

interface Props {
  state: State;
  work: string;
  onDo: Do;
  /** It is off. */
  onOff: () => void;
  onBack: () => void;
}

/** Before a work is taken off: who takes a number of it, and what becomes of those. */
export function TakeOff({ state, work, onDo, onOff, onBack }: Props) {
  const [leave, setLeave] = useState<'wait' | 'number'>('wait');
  const named = { answer: state.answer };
  const hanging = [...new Set(hangsOn(state, work).map((slot) => slotName(named, slot)))];
  const ways = [
    ['wait', words.wait, words.waitMore],
    ['number', words.put, words.putMore],
  ] as const;
  return (
    <section class="panel" aria-label={words.takeOff}>
      <h2>{words.takeOffAsk(workName(named, work))}</h2>
      <p>{words.takeOffLead}</p>
      {hanging.length > 0 && (
        <>
          <p>{words.hangs}</p>
          <ul>
            {hanging.map((name) => (
              <li key={name}>{name}</li>
            ))}
          </ul>
          <div class="ways">
            {ways.map(([way, name, more]) => (
              <button
                type="button"
                key={way}
                aria-pressed={leave === way}
                onClick={() => setLeave(way)}
              >
                <b>{name}</b> <small>{more}</small>
              </button>
            ))}
          </div>
        </>
      )}
      <div class="actions">
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button
          type="button"
          class="main"
          onClick={() => {
            onDo({ do: 'take off', work, leave });
            onOff();
          }}
        >
          {words.off}
        </button>
      </div>
    </section>
  );
}
