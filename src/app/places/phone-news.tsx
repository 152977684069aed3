import { phoneWords } from '#words/phone/phone-words.ts';
import { adopt } from '../../controls/adopt.ts';
import type { StoreFault } from '../../storage/store.ts';
import type { Offline } from '../offline/watch.ts';
import css from './phone-news.css?inline';

adopt(css);

/** Backups, and garments handed on; as text where a phone hands on no others. */
const BACKUP_FILES = 'application/json,.json,text/plain,.txt';

interface Props {
  offline: Offline;
  fault: StoreFault | undefined;
  /** The maker has read the notice, or wants the update later. */
  onDismiss: () => void;
}

/** What the home screen says of this phone: connection first, then storage; and what it asks. */
export function PhoneNews({ offline, fault, onDismiss }: Props) {
  return (
    <>
      <p class="news">{said(offline)}</p>
      {offline.tape && <p class="news">{phoneWords.tape[offline.tape]}</p>}
      {fault && <p class="news">{phoneWords.store[fault]}</p>}
      <Notice offline={offline} onDismiss={onDismiss} />
    </>
  );
}

function said({ block, ready }: Offline): string {
  if (block) return phoneWords.blocked[block];
  return ready ? phoneWords.ready : phoneWords.getting;
}

/** On a phone without a garment: a backup of another phone is one press away. */
export function RestoreKey({ onFile }: { onFile: (file: File) => void }) {
  return (
    <label class="restore">
      {phoneWords.restore}
      <input
        type="file"
        accept={BACKUP_FILES}
        onChange={({ currentTarget: { files } }) => files?.[0] && onFile(files[0])}
      />
    </label>
  );
}

/** The two things the app says by itself: it is ready offline, or a newer version is here. */
export function Notice({ offline, onDismiss }: Omit<Props, 'fault'>) {
  if (offline.taking) {
    return (
      <div class="notice" role="status">
        <p>{phoneWords.taking[offline.taking]}</p>
      </div>
    );
  }
  if (offline.update) {
    return (
      <div class="notice" role="status">
        <p>{phoneWords.update}</p>
        <button type="button" class="plain" onClick={onDismiss}>
          {phoneWords.later}
        </button>
        <button type="button" class="plain main" onClick={offline.update}>
          {phoneWords.takeUpdate}
        </button>
      </div>
    );
  }
  if (!offline.firstReady) return null;
  return (
    <div class="notice" role="status">
      <p>{phoneWords.readyNow}</p>
      <button type="button" class="plain main" onClick={onDismiss}>
        {phoneWords.understood}
      </button>
    </div>
  );
}
