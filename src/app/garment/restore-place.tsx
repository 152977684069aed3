import { useEffect, useState } from 'preact/hooks';
import { garmentFileWords as fileWords } from '#words/garment/garment-file-words.ts';
import { garmentRestoreWords as words } from '#words/garment/garment-restore-words.ts';
import type { Preview } from '../../garment/backup/backup-preview.ts';
import type { BackupRead } from '../../garment/backup/read-backup.ts';
import { FileProgress } from '../../screens/garments/file-progress.tsx';
import { type RestoreChoice, RestorePreview } from '../../screens/garments/restore-preview.tsx';
import type { Store } from '../../storage/store.ts';
import { notKept } from './deeds.ts';
import { previewAll, readFile } from './file.ts';
import { type Watch, type Work, watched } from './watch.ts';

/** A backup that was read, and what restoring it would change. */
type Read = Extract<BackupRead, { ok: true }> & { previews: readonly Preview[] };

/** What the maker chose of a backup. */
export interface Chosen {
  garments: readonly { garment: Preview['garment']; choice: RestoreChoice }[];
  setAside: Read['setAside'];
  /** When the file was written, in ms since 1970. */
  at: number;
}

interface Props {
  store: Store;
  file: File;
  onRestore: (chosen: Chosen) => void;
  onFault: (said: string) => void;
  onCancel: () => void;
}

/** A chosen file as a backup: what restoring it would change, or why it is none. */
export function GarmentRestorePlace({ store, file, onRestore, onFault, onCancel }: Props) {
  const [backup, setBackup] = useState<Read>();
  const [work, setWork] = useState<Work>();
  useEffect(() => {
    let gone = false;
    const show = (now: Work | undefined) => gone || setWork(now);
    setBackup(undefined);
    watched('reading', show, (watch) => readAll(store, file, watch)).then(
      (read) => {
        if (gone) return;
        if (typeof read === 'string') onFault(read);
        else setBackup(read);
      },
      async (error: unknown) => gone || onFault(await whyNot(error)),
    );
    return () => {
      gone = true;
    };
  }, [file]);
  if (work) return <FileProgress {...work} />;
  if (!backup) return null;
  return (
    <RestorePreview
      {...backup}
      onRestore={(garments) =>
        onRestore({ garments, setAside: backup.setAside, at: file.lastModified })
      }
      onCancel={onCancel}
    />
  );
}

/** The backup, or why it is none. */
async function readAll(store: Store, file: File, watch: Watch): Promise<Read | string> {
  const read = await readFile(file, watch);
  if (!read.ok) return read.fault === 'stopped' ? fileWords.notRead : words.fileFault[read.fault];
  const previews = await previewAll(store, read, watch);
  return previews ? { ...read, previews } : fileWords.notRead;
}

/** A file that can't be opened is not a fault of the store's. */
function whyNot(error: unknown): Promise<string> | string {
  return error instanceof DOMException ? words.fileFault.unread : notKept(error);
}
