import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

import { adopt } from '../../controls/adopt.ts';
import { readMade } from '../../controls/made.ts';
import { type Garment, inOrder, type Kept, LONGEST_NAME } from '../../garment/garment.ts';
import { garmentWords as words } from '../../words/garment-words.ts';
import css from './garments.css?inline';

adopt(css);

/** What can be done with garments. */
export interface GarmentDeeds {
  make(name: string): void;
  demo(): void;
  rename(garment: Garment, name: string): void;
  copy(garment: Garment): void;
  remove(garment: Garment): void;
  bringBack(garment: Garment): void;
  openKept(garment: Garment, kept: Kept, mode: '' | 'follow'): void;
  takeOff(garment: Garment, kept: Kept): void;
  backup(): void;
  restore(file: File): void;
  saveSetAside(): void;
  leave(): void;
}

interface Props {
  garments: readonly Garment[];
  deleted: readonly Garment[];
  setAside: number;
  lastBackup: string | undefined;
  /** What was just done, or why it could not be. */
  said: string | undefined;
  /** The garment deleted last, to be had back at once. */
  undo: Garment | undefined;
  hand: 'right' | 'left';
  deeds: GarmentDeeds;
  /** The preview of a restore, when a file was chosen. */
  children?: ComponentChildren;
}

/** Every garment with what is kept on it, in the order of the work. */
export function GarmentsScreen(props: Props) {
  const { garments, deleted, setAside, lastBackup, said, undo, hand, deeds, children } = props;
  return (
    <div class="garments" data-hand={hand}>
      <main>
        <h1>{words.title}</h1>
        <p>{words.about}</p>
        <p>{lastBackup === undefined ? words.noBackup : words.lastBackup(lastBackup)}</p>
        {said !== undefined && (
          <p role="status">
            <b>{said}</b>
          </p>
        )}
        <div class="lower">
          {undo && (
            <button type="button" class="plain main" onClick={() => deeds.bringBack(undo)}>
              {words.undo(undo.name)}
            </button>
          )}
          {children}
          {garments.length === 0 && <p>{words.none}</p>}
          {garments.map((garment) => (
            <GarmentCard key={garment.id} garment={garment} deeds={deeds} />
          ))}
          <NewGarment deeds={deeds} />
          <Files deeds={deeds} />
          {setAside > 0 && (
            <article>
              <p class="warning">{words.setAside(setAside)}</p>
              <button type="button" class="plain" onClick={deeds.saveSetAside}>
                {words.saveSetAside}
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

function GarmentCard({ garment, deeds }: { garment: Garment; deeds: GarmentDeeds }) {
  const [renaming, setRenaming] = useState(false);
  return (
    <article aria-label={garment.name}>
      <h2>{garment.name}</h2>
      <small>{words.keptCount(garment.kept.length)}</small>
      <ul>
        {inOrder(garment).map((kept) => (
          <KeptRow key={kept.id} garment={garment} kept={kept} deeds={deeds} />
        ))}
      </ul>
      {renaming ? (
        <NameForm
          label={words.name}
          first={garment.name}
          deed={words.rename}
          onName={(name) => {
            deeds.rename(garment, name);
            setRenaming(false);
          }}
        />
      ) : (
        <div class="keys">
          <button type="button" class="plain" onClick={() => setRenaming(true)}>
            {words.rename}
          </button>
          <button type="button" class="plain" onClick={() => deeds.copy(garment)}>
            {words.copy}
          </button>
          <button type="button" class="plain" onClick={() => deeds.remove(garment)}>
            {words.remove}
          </button>
        </div>
      )}
    </article>
  );
}

interface KeptRowProps {
  garment: Garment;
  kept: Kept;
  deeds: GarmentDeeds;
}

function KeptRow({ garment, kept, deeds }: KeptRowProps) {
  const made = readMade(kept.draft.made ?? '').size;
  return (
    <li>
      <span>
        {kept.name}
        <small>
          {words.stages[kept.stage]}
          {made > 0 && `, ${words.made(made)}`}
        </small>
      </span>
      <button type="button" class="plain" onClick={() => deeds.openKept(garment, kept, '')}>
        {words.open}
      </button>
      {Object.keys(kept.planned).length > 1 && (
        <button type="button" class="plain" onClick={() => deeds.openKept(garment, kept, 'follow')}>
          {words.follow}
        </button>
      )}
      <button type="button" class="plain" onClick={() => deeds.takeOff(garment, kept)}>
        {words.takeOff}
      </button>
    </li>
  );
}

function NewGarment({ deeds }: { deeds: GarmentDeeds }) {
  return (
    <article>
      <NameForm label={words.newGarment} first="" deed={words.make} onName={deeds.make} />
      <button type="button" class="plain" onClick={deeds.demo}>
        {words.demo}
      </button>
    </article>
  );
}

interface NameFormProps {
  label: string;
  first: string;
  deed: string;
  onName: (name: string) => void;
}

/** A name and the deed it is for; nothing but spaces is no name. */
function NameForm({ label, first, deed, onName }: NameFormProps) {
  const [name, setName] = useState(first);
  const [missing, setMissing] = useState(false);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        setMissing(name.trim() === '');
        if (name.trim() === '') return;
        onName(name);
        setName('');
      }}
    >
      <label>
        {label}
        <span class="keys">
          <input
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

function Files({ deeds }: { deeds: GarmentDeeds }) {
  return (
    <article>
      <div class="keys">
        <button type="button" class="plain" onClick={deeds.backup}>
          {words.backup}
        </button>
        <label class="choose">
          {words.restore}
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
      <h2>{words.deleted}</h2>
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
