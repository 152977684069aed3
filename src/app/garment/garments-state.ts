import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment-list-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import type { GarmentDeeds } from '../../screens/garments/deeds.ts';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { notKept, part } from './deeds.ts';
import { useShown } from './garments-shown.ts';
import type { Chosen } from './restore-place.tsx';
import type { Work } from './watch.ts';

/** What is shown after a deed: a garment that was made is open, and what is said of it. */
interface Outcome {
  open?: string;
  said?: string | undefined;
}

interface Undo {
  words: string;
  deed: () => void;
}

const changes = () => part(import('./changes.ts'));
const plans = () => part(import('./plans.ts'));
const files = () => part(import('./backup.ts'));

/** All garments as they are in the store, and everything that is done with them. */
export function useGarments(store: Store, address: Address, bench: Bench, leave: () => void) {
  const { shown, show, openOne, compare } = useShown(store);
  const [said, setSaid] = useState<string>();
  const [undo, setUndo] = useState<Undo>();
  const [file, setFile] = useState<File>();
  const [work, setWork] = useState<Work>();

  const fail = (error: unknown) => notKept(error).then(setSaid);
  const before = useRef(Promise.resolve());
  /** Does one thing after another, then shows what is there; what went wrong is said. */
  const act = (deed: () => Promise<Outcome | undefined> | Promise<void>, back?: Undo) => {
    const doing = before.current.then(async () => {
      try {
        const { open, said } = (await deed()) ?? {};
        await show(open);
        setSaid(said);
        setUndo(back);
      } catch (error) {
        await fail(error);
      }
    });
    // A bug in one deed must not keep the next from being done.
    before.current = doing.catch(() => undefined);
  };
  const look = () => act(async () => {});
  useEffect(() => {
    look();
    // Where it can't be compared the list is as good as it was.
    void before.current.then(compare).catch(() => undefined);
  }, []);

  const bringBack = (garment: Pick<Garment, 'id'>) =>
    act(async () => (await changes()).bringBack(store, garment));
  const putBack = (garment: Garment, kept: Kept) =>
    act(async () => (await changes()).putOn(store, garment, kept));
  const deeds: GarmentDeeds = {
    make: (name) => act(async () => ({ open: await (await changes()).make(store, name) })),
    demo: () => act(async () => ({ open: await (await changes()).makeDemo(store, bench) })),
    open: (id) => void openOne(id).catch(async (error) => setSaid(await notKept(error))),
    rename: (garment, name) => act(async () => (await changes()).rename(store, garment, name)),
    copy: (garment) => act(async () => ({ open: await (await changes()).copy(store, garment) })),
    remove: (garment) => {
      const back = { words: listWords.undo(garment.name), deed: () => bringBack(garment) };
      act(async () => (await changes()).remove(store, garment), back);
    },
    bringBack,
    openKept: (garment, kept) =>
      void plans()
        .then(({ openingOf }) => openingOf(garment, kept, bench))
        .then(address.go, fail),
    follow: ({ id }, only) => {
      const draft = { g: id, ...(only && { only: only.id }) };
      address.go({ screen: 'garments', mode: 'follow', draft });
    },
    takeOff: (garment, kept) => {
      const back = { words: listWords.undoTakeOff(kept.name), deed: () => putBack(garment, kept) };
      act(async () => (await changes()).takeOff(store, garment, kept), back);
    },
    putBack,
    backup: () => act(async () => ({ said: await (await files()).backUp(store, setWork) })),
    putOffBackup: () => act(async () => (await files()).putOffBackup(store, shown.garments)),
    restore: setFile,
    saveSetAside: () => act(async () => (await files()).saveSetAside(shown.setAside)),
    saveCleared: () => act(async () => (await files()).saveFromMemory(shown.cleared)),
    putBackCleared: () => act(async () => (await changes()).putBackAll(store, shown.cleared)),
    leave,
  };

  const forgetFile = (why?: string) => {
    setFile(undefined);
    setSaid(why);
  };
  const restore = (chosen: Chosen) => {
    setFile(undefined);
    act(async () => ({ said: await (await changes()).restoreChosen(store, chosen, setWork) }));
  };
  return { ...shown, said, undo, file, work, look, deeds, forgetFile, restore };
}
