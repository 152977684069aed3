import { useRef, useState } from 'preact/hooks';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import { LONGEST_NAME } from '../../garment/garment.ts';

interface Props {
  label: string;
  first: string;
  deed: string;
  onName: (name: string) => void;
}

/** A name and the deed it is for; nothing but spaces is no name. */
export function NameForm({ label, first, deed, onName }: Props) {
  const [name, setName] = useState(first);
  const [missing, setMissing] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        // As it stands there: what was typed just now may not be drawn yet.
        const typed = field.current?.value ?? name;
        setMissing(typed.trim() === '');
        if (typed.trim() === '') return;
        onName(typed);
        setName('');
      }}
    >
      <label>
        {label}
        <span class="keys">
          <input
            ref={field}
            type="text"
            value={name}
            maxLength={LONGEST_NAME}
            placeholder={words.makeHint}
            autoComplete="off"
            aria-invalid={missing}
            onInput={(event) => setName(event.currentTarget.value)}
          />
          <button type="submit" class="plain main">
            {deed}
          </button>
        </span>
      </label>
      {missing && (
        <p class="warning" role="status">
          {words.nameMissing}
        </p>
      )}
    </form>
  );
}
