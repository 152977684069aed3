import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment/garment-list-words.ts';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import { plain } from '../../calculation/find.ts';
import { adopt } from '../../controls/adopt.ts';
import type { Due } from '../../garment/backup/backup-due.ts';
import type { Listed } from '../../garment/record/listed.ts';
import type { GarmentDeeds, InventedGarment } from './deeds.ts';
import { Fetched } from './fetched.tsx';
import { GarmentRow } from './garment-row.tsx';
import css from './garments.css?inline';
import type { AsideProps } from './garments-aside.tsx';
import listCss from './garments-list.css?inline';
import { NameForm } from './name-form.tsx';
import { useDrawn } from './use-drawn.ts';

adopt(css);
adopt(listCss);

export interface GarmentsProps extends AsideProps {
  /** The last used first. */
  garments: readonly Listed[];
  lastBackup: string | undefined;
  /** What a backup made now would add, when it is time to ask for one. */
  due: Due | undefined;
  /** What was just done, or why it could not be. */
  said: string | undefined;
  /** What the last press can be undone with. */
  undo: { words: string; deed: () => void } | undefined;
  hand: 'right' | 'left';
  /** What is done with a file just now, or the preview of a restore. */
  children?: ComponentChildren;
}

/** Every garment by its name, the last used first. */
export function GarmentsScreen(props: GarmentsProps) {
  const { garments, lastBackup, due, said, undo, deeds } = props;
  return (
    <div class="garments" data-hand={props.hand}>
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
          {garments.length === 0 ? (
            <p>{listWords.none}</p>
          ) : (
            <Rows garments={garments} deeds={deeds} />
          )}
          <article>
            <NameForm label={words.newGarment} first="" deed={words.make} onName={deeds.make} />
            <div class="keys">
              {INVENTED.map(([which, label]) => (
                <button type="button" class="plain" key={which} onClick={() => deeds.demo(which)}>
                  {label}
                </button>
              ))}
            </div>
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

/** Invented garments to look at, and what is said of each. */
const INVENTED = Object.entries(listWords.demo) as [InventedGarment, string][];

/** So many are seen at a glance; more are searched. */
const AT_A_GLANCE = 5;

/** The garments there are, or those whose name holds what is searched for. */
function Rows({ garments, deeds }: Pick<GarmentsProps, 'garments' | 'deeds'>) {
  const [sought, setSought] = useState('');
  const [unfolded, setUnfolded] = useState<string>();
  const words = plain(sought).split(' ');
  const found = garments.filter(({ name }) => words.every((word) => plain(name).includes(word)));
  const drawn = useDrawn(found.length);
  return (
    <>
      {garments.length > AT_A_GLANCE && (
        <label>
          {listWords.search}
          <span class="keys">
            <input
              type="search"
              value={sought}
              autoComplete="off"
              onInput={(event) => setSought(event.currentTarget.value)}
            />
          </span>
        </label>
      )}
      {found.length === 0 && <p role="status">{listWords.noneFound(sought.trim())}</p>}
      {found.slice(0, drawn).map((garment) => (
        <GarmentRow
          key={garment.id}
          garment={garment}
          unfolded={garment.id === unfolded}
          onUnfold={(open) => setUnfolded(open ? garment.id : undefined)}
          deeds={deeds}
        />
      ))}
    </>
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
        <button type="button" class="plain" onClick={() => deeds.backup('save')}>
          {listWords.backup}
        </button>
        {typeof navigator.share === 'function' && (
          <button type="button" class="plain" onClick={() => deeds.backup('share')}>
            {listWords.shareBackup}
          </button>
        )}
        <label class="choose">
          {listWords.restore}
          <input
            type="file"
            accept="application/json,.json,text/plain,.txt"
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
