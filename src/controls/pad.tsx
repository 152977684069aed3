import { padWords } from '../words/pad-words.ts';
import { digitKeys, type Key, lengthKeys, plainKeys } from './pad-keys.ts';
import type { PadProps } from './pad-props.ts';
import { Rich } from './rich.tsx';
import './pad.css';

/** The number pad: digits at the outer side of the thumb, what the field needs beside them. */
export function Pad(props: PadProps) {
  const isLength = props.field.kind === 'length' || props.field.kind === 'lengths';
  return (
    <fieldset class="pad" data-hand={props.bench.hand} aria-label={padWords.pad}>
      <Keys keys={digitKeys(props)} />
      <Keys keys={isLength ? lengthKeys(props) : plainKeys(props)} />
    </fieldset>
  );
}

function Keys({ keys }: { keys: readonly (Key | undefined)[] }) {
  return (
    <div class="keys">
      {keys.map((key, i) =>
        key ? (
          <button
            type="button"
            key={key.name}
            class={key.kind}
            aria-label={key.name === key.face ? undefined : key.name}
            // Keeps the caret in the field, so that hardware keys go on working.
            onPointerDown={(event) => event.preventDefault()}
            onClick={key.press}
          >
            <Rich text={key.face} />
          </button>
        ) : (
          <span key={i} />
        ),
      )}
    </div>
  );
}
