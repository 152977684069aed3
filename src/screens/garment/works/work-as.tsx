import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { State } from '../../../garment/actions/state.ts';
import { hasFacts } from '../../../garment/actions/works.ts';
import type { Do } from './use-typing.ts';

interface Props {
  state: State;
  work: string;
  onDo: Do;
  onBack: () => void;
}

/** Further times that are offered beside once, and left and right. */
const TIMES = [2, 3, 4, 5, 6];

/** Each way a work can be done, as the names of its sides: none of what is done once. */
const SIDES: readonly (readonly string[])[] = [
  [],
  words.leftRight,
  ...TIMES.map((times) => Array.from({ length: times }, (_, i) => String(i + 1))),
];

/** What a work is called, and how often it is done: left and right, or several times. */
export function WorkAs({ state, work, onDo, onBack }: Props) {
  const known = state.answer.sound.works.get(work);
  const was = known?.sides ?? [];
  const [name, setName] = useState(known?.name ?? '');
  const [sides, setSides] = useState(was);
  // What is made has its side as its home: of other sides it would be nobody's.
  const fixed = hasFacts(state, work);
  const empty = name.trim() === '';
  const isOther = !isSame(sides, was);
  const keep = () => {
    const to = isOther && { sides: sides.length > 0 ? sides : undefined };
    onDo({ do: 'say', of: 'works', ids: [work], set: { name: name.trim(), ...to } });
    onBack();
  };
  const own = SIDES.some((one) => isSame(one, was)) ? [] : [was];
  return (
    <form
      class="panel"
      onSubmit={(event) => {
        event.preventDefault();
        if (!empty) keep();
      }}
    >
      <label class="tile wide">
        <span>{words.name}</span>
        <span class="typed">
          <input
            type="text"
            maxLength={80}
            autoComplete="off"
            value={name}
            aria-invalid={empty}
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
        </span>
      </label>
      <p role="status">{empty && words.nameMissing}</p>
      {fixed ? (
        <p>{words.oftenFixed}</p>
      ) : (
        <fieldset class="chips" aria-label={words.often}>
          {[...SIDES, ...own].map((one) => (
            <button
              type="button"
              key={one.join()}
              aria-pressed={isSame(one, sides)}
              onClick={() => setSides(one)}
            >
              {words.oftenAs(one)}
            </button>
          ))}
        </fieldset>
      )}
      <div class="actions">
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button type="submit" class="main" disabled={empty}>
          {words.keep}
        </button>
      </div>
    </form>
  );
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((side, i) => side === other[i]);
}
