import { useState } from 'preact/hooks';

import type { Preview, Rejected } from '../../garment/backup.ts';
import type { Garment } from '../../garment/garment.ts';
import { garmentRestoreWords as words } from '../../words/garment-restore-words.ts';

/** What becomes of one garment of a backup. */
export type RestoreChoice = 'skip' | 'take' | 'both';

interface Props {
  previews: readonly Preview[];
  rejected: readonly Rejected[];
  onRestore: (chosen: readonly { garment: Garment; choice: RestoreChoice }[]) => void;
  onCancel: () => void;
}

/** What a restore would change, garment by garment, before anything is changed. */
export function RestorePreview({ previews, rejected, onRestore, onCancel }: Props) {
  const [choices, setChoices] = useState<Readonly<Record<string, RestoreChoice>>>({});
  const choiceOf = ({ garment, state }: Preview): RestoreChoice =>
    choices[garment.id] ?? (state === 'new' ? 'take' : 'skip');
  return (
    <article aria-label={words.preview}>
      <h2>{words.preview}</h2>
      {rejected.map(({ place, name, damage }) => (
        <p class="warning" key={place}>
          {words.rejected(place, name, damage)}
        </p>
      ))}
      {previews.map((preview) => (
        <fieldset key={preview.garment.id}>
          <legend>
            <b>{preview.garment.name}</b>
            <small>{about(preview)}</small>
          </legend>
          <div class="keys">
            {waysFor(preview).map((way) => (
              <label class="choose" key={way}>
                <input
                  type="radio"
                  name={preview.garment.id}
                  checked={choiceOf(preview) === way}
                  onChange={() => setChoices({ ...choices, [preview.garment.id]: way })}
                />
                {words[way]}
              </label>
            ))}
          </div>
          {choiceOf(preview) === 'take' && preview.state === 'differs' && <p>{words.toBin}</p>}
        </fieldset>
      ))}
      <div class="keys">
        <button
          type="button"
          class="plain main"
          onClick={() =>
            onRestore(previews.map((one) => ({ garment: one.garment, choice: choiceOf(one) })))
          }
        >
          {words.restoreNow}
        </button>
        <button type="button" class="plain" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </article>
  );
}

function waysFor({ state }: Preview): RestoreChoice[] {
  if (state === 'same') return ['skip'];
  return state === 'new' ? ['take', 'skip'] : ['skip', 'take', 'both'];
}

function about({ state, later, added, changed, lost }: Preview): string {
  const said = [
    state === 'differs'
      ? `${words.previewState.differs}: ${words.previewLater(later)}`
      : words.previewState[state],
    ...(added.length > 0 ? [words.added(added.join(', '))] : []),
    ...(changed.length > 0 ? [words.changed(changed.join(', '))] : []),
    ...(lost.length > 0 ? [words.lost(lost.join(', '))] : []),
  ];
  return said.join('; ');
}
