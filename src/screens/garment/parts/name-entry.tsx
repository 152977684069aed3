import { useRef, useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';

interface Props<Kind extends string> {
  first: string;
  deed: string;
  /** What a name may be like. */
  hint: string;
  /** What it may be, with the words for it, the first as it begins; none where that isn't asked. */
  kinds: readonly (readonly [kind: Kind, words: string])[];
  onName: (name: string, kind: Kind | undefined) => void;
  onLeave: () => void;
}

/** Gives something a name; nothing but spaces is none. */
export function NameEntry<Kind extends string>(props: Props<Kind>) {
  const { first, deed, hint, kinds, onName, onLeave } = props;
  const [name, setName] = useState(first);
  const [kind, setKind] = useState(kinds[0]?.[0]);
  const [missing, setMissing] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const keep = () => {
    // As it stands there: what was typed just now may not be drawn yet.
    const typed = (field.current?.value ?? name).trim();
    setMissing(typed === '');
    if (typed !== '') onName(typed, kind);
  };
  return (
    <form
      class="naming"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <label>
        {words.name}
        <input
          ref={field}
          type="text"
          value={name}
          maxLength={80}
          placeholder={hint}
          autoComplete="off"
          aria-invalid={missing}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {kinds.length > 0 && (
        <fieldset class="kinds" aria-label={words.kind}>
          {kinds.map(([one, said]) => (
            <button
              type="button"
              key={one}
              aria-pressed={one === kind}
              onClick={() => setKind(one)}
            >
              {said}
            </button>
          ))}
        </fieldset>
      )}
      {missing && (
        <p class="warning" role="status">
          {words.nameMissing}
        </p>
      )}
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {words.cancel}
        </button>
        <button type="submit" class="main">
          {deed}
        </button>
      </div>
    </form>
  );
}
