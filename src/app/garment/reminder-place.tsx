import { useEffect, useState } from 'preact/hooks';
import { backupDue, type Due, readStand } from '../../garment/backup/backup-due.ts';
import type { Listed } from '../../garment/record/listed.ts';
import { BackupDue } from '../../screens/garments/backup-due.tsx';
import { FileProgress } from '../../screens/garments/file-progress.tsx';
import { loadList } from '../../storage/garment-list.ts';
import type { Store } from '../../storage/store.ts';
import { backUp, putOffBackup } from './backup.ts';
import { BACKUP_KEY, notKept, PUT_OFF_KEY } from './deeds.ts';
import type { Work } from './watch.ts';

interface Asked {
  due: Due;
  ever: boolean;
  garments: readonly Listed[];
}

/** Asks for a backup where the garment is made; nothing while none is due. */
export function ReminderPlace({ store }: { store: Store }) {
  const [asked, setAsked] = useState<Asked>();
  const [work, setWork] = useState<Work>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    let gone = false;
    // Where the store can't be read the garment says so.
    askedOf(store).then(
      (now) => gone || setAsked(now),
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [store]);
  const act = async (deed: () => Promise<string | undefined>) => {
    try {
      setSaid(await deed());
      setAsked(await askedOf(store));
    } catch (error) {
      setSaid(await notKept(error));
    }
  };
  if (work) return <FileProgress {...work} />;
  return (
    <>
      {said !== undefined && <p role="status">{said}</p>}
      {asked && (
        <BackupDue
          {...asked.due}
          ever={asked.ever}
          deeds={{
            backup: (way) => void act(() => backUp(store, setWork, way)),
            putOffBackup: () =>
              void act(async () => {
                await putOffBackup(store, asked.garments);
                return undefined;
              }),
          }}
        />
      )}
    </>
  );
}

/** What would be lost, where it is time to ask for a backup. */
async function askedOf(store: Store): Promise<Asked | undefined> {
  const [{ garments }, kept, putOff] = await Promise.all([
    loadList(store),
    store.load(BACKUP_KEY),
    store.load(PUT_OFF_KEY),
  ]);
  const last = readStand(kept);
  const due = backupDue(garments, last, readStand(putOff), Date.now());
  return due && { due, ever: last !== undefined, garments };
}
