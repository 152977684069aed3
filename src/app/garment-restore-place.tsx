import { useEffect, useState } from 'preact/hooks';

import { type BackupRead, previewBackup, readBackup } from '../garment/backup.ts';
import type { Garment } from '../garment/garment.ts';
import { type RestoreChoice, RestorePreview } from '../screens/garments/restore-preview.tsx';
import { garmentRestoreWords as words } from '../words/garment-restore-words.ts';

interface Props {
  file: File;
  /** The garments that are here. */
  garments: readonly Garment[];
  onRestore: (chosen: readonly { garment: Garment; choice: RestoreChoice }[]) => void;
  onFault: (said: string) => void;
  onCancel: () => void;
}

/** A chosen file as a backup: what restoring it would change, or why it is none. */
export function GarmentRestorePlace({ file, garments, onRestore, onFault, onCancel }: Props) {
  const [backup, setBackup] = useState<Extract<BackupRead, { ok: true }>>();
  useEffect(() => {
    setBackup(undefined);
    let gone = false;
    file.text().then(
      (text) => {
        if (gone) return;
        const read = readBackup(text);
        if (read.ok) setBackup(read);
        else onFault(words.fileFault[read.fault]);
      },
      () => onFault(words.fileFault.unread),
    );
    return () => {
      gone = true;
    };
  }, [file]);
  if (!backup) return null;
  return (
    <RestorePreview
      previews={previewBackup(garments, backup.garments)}
      rejected={backup.rejected}
      onRestore={onRestore}
      onCancel={onCancel}
    />
  );
}
