import { useState } from 'preact/hooks';
import { garmentRestoreWords as words } from '#words/garment/garment-restore-words.ts';
import type { AsideRecord, Rejected } from '../../garment/backup/backup-finds.ts';
import type { Preview } from '../../garment/backup/backup-preview.ts';
import { writtenIn } from '../../garment/backup/written.ts';
import type { Garment } from '../../garment/record/record.ts';

/** What becomes of one garment of a backup. */
export type RestoreChoice = 'skip' | 'take' | 'both';

/** More of one kind are counted. */
const MOST_SHOWN = 12;

interface Props {
  previews: readonly Preview[];
  rejected: readonly Rejected[];
  setAside: readonly AsideRecord[];
  lacks: number | undefined;
  onRestore: (chosen: readonly { garment: Garment; choice: RestoreChoice }[]) => void;
  onCancel: () => void;
}

/** What a restore would change, garment by garment, before anything is changed. */
export function RestorePreview(props: Props) {
  const { previews, onRestore, onCancel } = props;
  const [choices, setChoices] = useState<Readonly<Record<string, RestoreChoice>>>({});
  // What may be wrong is taken only when it is chosen.
  const choiceOf = ({ garment, state, damaged }: Preview): RestoreChoice =>
    choices[garment.id] ?? (state === 'new' && !damaged ? 'take' : 'skip');
  return (
    <article aria-label={words.preview}>
      <h2>{words.preview}</h2>
      <FileFaults {...props} />
      {previews.map((preview) => (
        <fieldset key={preview.garment.id}>
          <legend>
            <b>{preview.garment.name}</b>
            <small>{about(preview)}</small>
          </legend>
          {preview.damaged && <Damaged garment={preview.garment} />}
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

/** What is wrong with the file as a whole, and what of it can't be taken. */
function FileFaults({ previews, rejected, setAside, lacks }: Props) {
  const more = rejected.length - MOST_SHOWN;
  return (
    <>
      {lacks !== undefined && <p class="warning">{words.lacks(previews.length, lacks)}</p>}
      {rejected.slice(0, MOST_SHOWN).map(({ place, name, damage, text }) => (
        <div key={place}>
          <p class="warning">{words.rejected(place, name, damage)}</p>
          <details>
            <summary>{words.look}</summary>
            <code>{text}</code>
          </details>
        </div>
      ))}
      {more > 0 && <p class="warning">{words.moreRejected(more)}</p>}
      {setAside.length > 0 && <p>{words.setAside(setAside.length)}</p>}
    </>
  );
}

/** A garment that was changed after it was written: what is in it now, as it stands there. */
function Damaged({ garment }: { garment: Garment }) {
  return (
    <>
      <p class="warning">{words.damaged}</p>
      <details>
        <summary>{words.look}</summary>
        <ul>
          {writtenIn(garment).map(({ id, name, typed, made }) => (
            <li key={id}>
              <b>{name}</b>
              <small>{words.typed(typed)}</small>
              {made.length > 0 && <small>{words.made(made)}</small>}
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}

function waysFor({ state }: Preview): RestoreChoice[] {
  if (state === 'same') return ['skip'];
  return state === 'new' ? ['take', 'skip'] : ['skip', 'take', 'both'];
}

/** Names of what is kept: not so many that the choice itself is out of sight. */
function few(names: readonly string[]): string {
  const more = names.length - MOST_SHOWN;
  return words.few(names.slice(0, MOST_SHOWN).join(', '), Math.max(0, more));
}

function about({ state, later, added, changed, lost, unmade }: Preview): string {
  const said = [
    state === 'differs'
      ? `${words.previewState.differs}: ${words.previewLater(later)}`
      : words.previewState[state],
    ...(added.length > 0 ? [words.added(few(added))] : []),
    ...(changed.length > 0 ? [words.changed(few(changed))] : []),
    ...(lost.length > 0 ? [words.lost(few(lost))] : []),
    ...(unmade > 0 ? [words.unmade(unmade)] : []),
  ];
  return said.join('; ');
}
