import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';

interface Props {
  first: string;
  /** What is said before the name is asked. */
  lead?: ComponentChildren;
  deed: string;
  /** With the name, without spaces around it. */
  onName: (name: string) => void;
  onBack: () => void;
  /** What else is asked. */
  children?: ComponentChildren;
}

/** Asks for a name in an opened work; nothing but spaces is none. */
export function NameForm({ first, lead, deed, onName, onBack, children }: Props) {
  const [name, setName] = useState(first);
  const trimmed = name.trim();
  const empty = trimmed === '';
  return (
    <form
      class="panel"
      onSubmit={(event) => {
        event.preventDefault();
        if (!empty) onName(trimmed);
      }}
    >
      {lead}
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
      {children}
      <div class="actions">
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button type="submit" class="main" disabled={empty}>
          {deed}
        </button>
      </div>
    </form>
  );
}
