import type { ComponentChildren } from 'preact';
import { garmentListWords as listWords } from '#words/garment-list-words.ts';
import { garmentWords as words } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { adopt } from '../../controls/adopt.ts';
import type { Garment } from '../../garment/garment.ts';
import type { Listed } from '../../garment/listed.ts';
import type { GarmentDeeds } from './deeds.ts';
import { Fetched } from './fetched.tsx';
import css from './garments.css?inline';
import type { AsideProps } from './garments-aside.tsx';
import listCss from './garments-list.css?inline';
import { NameForm } from './name-form.tsx';
import { OpenGarment } from './open-garment.tsx';
import { useDrawn } from './use-drawn.ts';

adopt(css);
adopt(listCss);

export interface GarmentsProps extends AsideProps {
  garments: readonly Listed[];
  /** The id of the one that is open, if any is. */
  open: string | undefined;
  /** That one, once it has been read. */
  opened: Garment | undefined;
  lastBackup: string | undefined;
  /** What a backup made now would add, when it is time to ask for one. */
  due: { changes: number; days: number } | undefined;
  /** What was just done, or why it could not be. */
  said: string | undefined;
  /** What the last press can be undone with. */
  undo: { words: string; deed: () => void } | undefined;
  bench: Bench;
  /** What is done with a file just now, or the preview of a restore. */
  children?: ComponentChildren;
}

/** Every garment by its name; one is open, with what is kept on it. */
export function GarmentsScreen(props: GarmentsProps) {
  const { garments, open, opened, lastBackup, due, said, undo, deeds } = props;
  const drawn = useDrawn(garments.length);
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
          {due && (
            <Fetched load={loadDue} give={{ ...due, ever: lastBackup !== undefined, deeds }} />
          )}
          {props.children}
          {garments.length === 0 && <p>{listWords.none}</p>}
          {garments.slice(0, drawn).map((garment) => (
            <article key={garment.id} aria-label={garment.name}>
              <h2>
                <button
                  type="button"
                  aria-expanded={garment.id === open}
                  onClick={() => deeds.open(garment.id === open ? undefined : garment.id)}
                >
                  <span>
                    {garment.name}
                    <small>{listWords.keptCount(garment.count)}</small>
                  </span>
                </button>
              </h2>
              {garment.id === open && opened?.id === open && (
                <OpenGarment garment={opened} bench={props.bench} deeds={deeds} />
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
          {isAside(props) && <Fetched load={loadAside} give={props} />}
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

const loadDue = () => import('./backup-due.tsx').then((part) => part.BackupDue);
const loadAside = () => import('./garments-aside.tsx').then((part) => part.GarmentsAside);

/** Whether there is anything beside the garments. */
function isAside({ deleted, setAside, cleared }: AsideProps): boolean {
  return deleted.length + cleared.length + setAside.damaged + setAside.newer > 0;
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
