import { useEffect, useRef, useState } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import { type BackupRead, previewBackup, readBackup, writeBackup } from '../garment/backup.ts';
import { demoGarment } from '../garment/demo.ts';
import { copied, type Garment, renamed, withoutKept } from '../garment/garment.ts';
import { type GarmentDeeds, GarmentsScreen } from '../screens/garments/garments.tsx';
import { type RestoreChoice, RestorePreview } from '../screens/garments/restore-preview.tsx';
import {
  addGarment,
  changeGarment,
  type Garments,
  loadGarments,
  moveGarment,
  replaceGarment,
} from '../storage/garments.ts';
import type { Store } from '../storage/store.ts';
import { garmentWords as words } from '../words/garment-words.ts';
import { addressOf, askToPersist, makeGarment, notKept, saveFile } from './garment-deeds.ts';
import type { Address } from './use-address.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onHome: () => void;
}

const BACKUP_KEY = 'last-backup';
const NOTHING: Garments = { garments: [], deleted: [], setAside: [] };

/** The garments on this phone, and everything done with them. */
export function GarmentsPlace({ store, address, bench, onHome }: Props) {
  const [all, setAll] = useState(NOTHING);
  const [lastBackup, setLastBackup] = useState<unknown>();
  const [said, setSaid] = useState<string>();
  const [undo, setUndo] = useState<Garment>();
  const [file, setFile] = useState<Extract<BackupRead, { ok: true }>>();

  const load = async () => {
    setAll(await loadGarments(store));
    setLastBackup(await store.load(BACKUP_KEY));
  };
  const before = useRef(Promise.resolve());
  /** Does one thing after another to the store, then shows what is there; what went wrong is said. */
  const act = (work: () => Promise<unknown>, done?: string) => {
    before.current = before.current.then(async () => {
      try {
        await work();
        setSaid(done);
        await load();
      } catch (error) {
        setSaid(notKept(error));
      }
    });
    return before.current;
  };
  useEffect(() => void act(async () => undefined), []);

  const add = (garment: Garment) => act(() => addGarment(store, garment)).then(askToPersist);
  const change = (id: string, by: (garment: Garment) => Garment) =>
    act(() => changeGarment(store, id, by));
  const deeds: GarmentDeeds = {
    make: (name) => void add(makeGarment(name)),
    demo: () => void add(demoGarment(crypto.randomUUID(), Date.now())),
    rename: ({ id }, name) => void change(id, (garment) => renamed(garment, name, Date.now())),
    copy: (garment) =>
      void add(copied(garment, crypto.randomUUID(), words.copyOf(garment.name), Date.now())),
    remove: (garment) => {
      // Offered once it is in the bin: before that there is nothing to bring back.
      void act(() => moveGarment(store, garment.id, 'bin')).then(() => setUndo(garment));
    },
    bringBack: (garment) => {
      setUndo(undefined);
      void act(() => moveGarment(store, garment.id, 'here'));
    },
    takeOff: ({ id }, kept) =>
      void change(id, (garment) => withoutKept(garment, kept.id, Date.now())),
    openKept: (garment, kept, mode) => address.go(addressOf(garment, kept, mode)),
    backup: () =>
      void act(async () => {
        const { garments } = await loadGarments(store);
        saveFile(`thumbrule-${new Date().toISOString().slice(0, 10)}.json`, writeBackup(garments));
        await store.change(BACKUP_KEY, () => Date.now());
      }),
    restore: (chosen) => void read(chosen),
    saveSetAside: () => saveFile('thumbrule-set-aside.json', JSON.stringify(all.setAside, null, 1)),
    leave: onHome,
  };

  const read = async (chosen: File) => {
    const result = readBackup(await chosen.text());
    setFile(result.ok ? result : undefined);
    setSaid(result.ok ? undefined : words.fileFault[result.fault]);
  };
  const restore = (chosen: readonly { garment: Garment; choice: RestoreChoice }[]) => {
    const wanted = chosen.filter(({ choice }) => choice !== 'skip');
    setFile(undefined);
    void act(async () => {
      for (const { garment, choice } of wanted) {
        if (choice === 'take') await replaceGarment(store, garment);
        else {
          const name = words.copyOf(garment.name);
          await addGarment(store, copied(garment, crypto.randomUUID(), name, Date.now()));
        }
      }
    }, words.restored(wanted.length));
  };

  return (
    <GarmentsScreen
      {...all}
      setAside={all.setAside.length}
      lastBackup={
        typeof lastBackup === 'number' ? new Date(lastBackup).toLocaleDateString() : undefined
      }
      said={said}
      undo={undo}
      hand={bench.hand}
      deeds={deeds}
    >
      {file && (
        <RestorePreview
          previews={previewBackup(all.garments, file.garments)}
          rejected={file.rejected}
          onRestore={restore}
          onCancel={() => setFile(undefined)}
        />
      )}
    </GarmentsScreen>
  );
}
