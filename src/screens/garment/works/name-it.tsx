import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Kind } from '../../../calculation/output.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { Link } from '../../../garment/record/record.ts';
import { linkName } from '../said/names.ts';
import type { Do } from './use-typing.ts';

interface Props {
  state: State;
  link: Link;
  kind: Kind;
  onDo: Do;
  onBack: () => void;
}

/** Gives a found number a name of its own: a quantity that follows it. */
export function NameIt({ state, link, kind, onDo, onBack }: Props) {
  const found = linkName({ answer: state.answer }, link);
  const [name, setName] = useState(found);
  const keep = () => {
    const ranks = [...state.answer.sound.quantities.values()].map(({ rank }) => rank);
    const rank = Math.max(0, ...ranks) + 1;
    const it = { name: name.trim(), kind, rank, parts: [{ link }] };
    onDo({ do: 'add', to: 'quantities', id: crypto.randomUUID(), it });
    onBack();
  };
  const empty = name.trim() === '';
  return (
    <form
      class="panel"
      onSubmit={(event) => {
        event.preventDefault();
        if (!empty) keep();
      }}
    >
      <p>{words.nameLead(found)}</p>
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
      <div class="actions">
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button type="submit" class="main" disabled={empty}>
          {words.nameIt}
        </button>
      </div>
    </form>
  );
}
