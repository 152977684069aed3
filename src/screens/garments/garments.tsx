import type { ComponentChildren } from 'preact';

import { adopt } from '../../controls/adopt.ts';
import type { Bench } from '../../controls/bench.ts';
import type { Garment } from '../../garment/garment.ts';
import { garmentListWords as listWords } from '../../words/garment-list-words.ts';
import { garmentWords as words } from '../../words/garment-words.ts';
import type { GarmentDeeds } from './deeds.ts';
import css from './garments.css?inline';
import listCss from './garments-list.css?inline';
import { NameForm } from './name-form.tsx';
import { OpenGarment } from './open-garment.tsx';

adopt(css);
adopt(listCss);

export interface GarmentsProps {
  garments: readonly Garment[];
  /** The id of the one that is open, if any is. */
  open: string | undefined;
  deleted: readonly Garment[];
  setAside: number;
  lastBackup: string | undefined;
  /** What a backup made now would add, when it is time to ask for one. */
  due: { changes: number; days: number } | undefined;
  /** What was just done, or why it could not be. */
  said: string | undefined;
  /** What the last press can be undone with. */
  undo: { words: string; deed: () => void } | undefined;
  bench: Bench;
  deeds: GarmentDeeds;
  /** The preview of a restore, when a file was chosen. */
  children?: ComponentChildren;
}

/** Every garment by its name; one is open, with what is kept on it. */
export function GarmentsScreen(props: GarmentsProps) {
  const { garments, open, deleted, setAside, lastBackup, due, said, undo, deeds } = props;
  return (
    <div class="garments" data-hand={props.bench.hand}>
      <main>
        <h1>{words.title}</h1>
        <p>{listWords.about}</p>
        <p>{lastBackup === undefined ? listWords.noBackup : listWords.lastBackup(lastBackup)}</p>
        {said !== undefined && (
          <p role="status">
            <b>{said}</b>
          </p>
        )}
        <div class="lower">
          {undo && (
            <button type="button" class="plain main" onClick={undo.deed}>
              {undo.words}
            </button>
          )}
          {due && <BackupDue {...due} ever={lastBackup !== undefined} deeds={deeds} />}
          {props.children}
          {garments.length === 0 && <p>{listWords.none}</p>}
          {garments.map((garment) => (
            <article key={garment.id} aria-label={garment.name}>
              <h2>
                <button
                  type="button"
                  aria-expanded={garment.id === open}
                  onClick={() => deeds.open(garment.id === open ? undefined : garment)}
                >
                  <span>
                    {garment.name}
                    <small>{listWords.keptCount(garment.kept.length)}</small>
                  </span>
                </button>
              </h2>
              {garment.id === open && (
                <OpenGarment garment={garment} bench={props.bench} deeds={deeds} />
              )}
            </article>
          ))}
          <article>
            <NameForm label={words.newGarment} first="" deed={words.make} onName={deeds.make} />
            <button type="button" class="plain" onClick={deeds.demo}>
              {listWords.demo}
            </button>
          </article>
          <Files deeds={deeds} />
          {setAside > 0 && (
            <article>
              <p class="warning">{listWords.setAside(setAside)}</p>
              <button type="button" class="plain" onClick={deeds.saveSetAside}>
                {listWords.saveSetAside}
              </button>
            </article>
          )}
          {deleted.length > 0 && <Bin deleted={deleted} deeds={deeds} />}
        </div>
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={deeds.leave}>
          {words.back}
        </button>
      </nav>
    </div>
  );
}

interface DueProps {
  changes: number;
  days: number;
  /** There has been a backup before. */
  ever: boolean;
  deeds: GarmentDeeds;
}

/** A quiet line that asks for a backup, and can be put off. */
function BackupDue({ changes, days, ever, deeds }: DueProps) {
  return (
    <div class="due">
      <p>{listWords.backupDue(changes, days, ever)}</p>
      <div class="keys">
        <button type="button" class="plain" onClick={deeds.backup}>
          {listWords.backup}
        </button>
        <button type="button" class="plain" onClick={deeds.putOffBackup}>
          {listWords.later}
        </button>
      </div>
    </div>
  );
}

function Files({ deeds }: { deeds: GarmentDeeds }) {
  return (
    <article>
      <div class="keys">
        <button type="button" class="plain" onClick={deeds.backup}>
          {listWords.backup}
        </button>
        <label class="choose">
          {listWords.restore}
          <input
            type="file"
            accept="application/json,.json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              if (file) deeds.restore(file);
              event.currentTarget.value = '';
            }}
          />
        </label>
      </div>
    </article>
  );
}

function Bin({ deleted, deeds }: { deleted: readonly Garment[]; deeds: GarmentDeeds }) {
  return (
    <article>
      <h2>{listWords.deleted}</h2>
      <ul>
        {deleted.map((garment) => (
          <li key={garment.id}>
            <span>{garment.name}</span>
            <button type="button" class="plain" onClick={() => deeds.bringBack(garment)}>
              {words.bringBack}
            </button>
          </li>
        ))}
      </ul>
    </article>
  );
}
