import { useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment-measures-words.ts';

/** A quantity's kind, where it can be chosen. */
export type MeasureKind = 'length' | 'count';

interface Props {
  first: string;
  deed: string;
  /** Its kind is asked for, too. */
  kinds: boolean;
  onName: (name: string, kind: MeasureKind) => void;
  onLeave: () => void;
}

const KINDS: readonly MeasureKind[] = ['length', 'count'];

/** Names a number of the garment; nothing but spaces is no name. */
export function MeasureName({ first, deed, kinds, onName, onLeave }: Props) {
  const [name, setName] = useState(first);
  const [kind, setKind] = useState<MeasureKind>('length');
  const [missing, setMissing] = useState(false);
  const keep = () => {
    setMissing(name.trim() === '');
    if (name.trim() !== '') onName(name.trim(), kind);
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
          type="text"
          value={name}
          maxLength={80}
          placeholder={words.nameHint}
          autoComplete="off"
          aria-invalid={missing}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {kinds && (
        <fieldset class="kinds" aria-label={words.kind}>
          {KINDS.map((one) => (
            <button
              type="button"
              key={one}
              aria-pressed={one === kind}
              onClick={() => setKind(one)}
            >
              {words[one]}
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
