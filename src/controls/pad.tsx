import { useMemo, useRef } from 'preact/hooks';
import { padWords } from '#words/controls/pad-words.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Field } from '../calculation/calculation.ts';
import { unitOfTail } from './pad-edit.ts';
import {
  digitKeys,
  type Fresh,
  isLength,
  type Key,
  lengthKeys,
  type PadKind,
  plainKeys,
} from './pad-keys.ts';
import { Rich } from './rich.tsx';
import './pad.css';

interface Props {
  field: Field;
  text: string;
  fresh: Fresh;
  bench: Bench;
  onText: (text: string, fresh: Fresh) => void;
  onNext: () => void;
}

/**
 * The number pad: digits at the outer side of the thumb, what the field needs
 * beside them. Its thirty keys are made anew only when they change, not at each press.
 */
export function Pad(props: Props) {
  const latest = useRef(props);
  latest.current = props;
  const { bench } = props;
  const { kind } = props.field;
  const unit = unitOfTail(props.text, bench.unit);
  return useMemo(() => {
    const press = ({ edit, staysFresh }: Key) => {
      const { text, fresh, onText, onNext } = latest.current;
      if (!edit) onNext();
      else onText(edit(text, fresh), staysFresh && fresh !== 'no' ? 'number' : 'no');
    };
    return <Keys pad={{ kind, unit, bench }} onPress={press} />;
  }, [kind, unit, bench]);
}

function Keys({ pad, onPress }: { pad: PadKind; onPress: (key: Key) => void }) {
  const beside = isLength(pad.kind) ? lengthKeys(pad) : plainKeys();
  return (
    <fieldset class="pad" data-hand={pad.bench.hand} aria-label={padWords.pad}>
      {[digitKeys(pad), beside].map((keys, half) => (
        <div class="keys" key={half}>
          {keys.map((key, i) =>
            key ? (
              <button
                type="button"
                key={i}
                class={key.kind}
                aria-label={key.name === key.face ? undefined : key.name}
                // As a keyboard does, a key acts when it goes down. The caret stays in the field.
                onPointerDown={(event) => {
                  event.preventDefault();
                  if (event.button === 0 && key.edit) onPress(key);
                }}
                // Not by a pointer: Enter, Space, a screen reader. And the key that leads elsewhere
                // acts when it comes up: what takes its place must not be pressed by the same finger.
                onClick={(event) => {
                  if (event.detail === 0 || !key.edit) onPress(key);
                }}
              >
                <Rich text={key.face} />
              </button>
            ) : (
              <span key={i} />
            ),
          )}
        </div>
      ))}
    </fieldset>
  );
}
