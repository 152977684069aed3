import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment/garment-list-words.ts';
import type { Listed } from '../../garment/record/listed.ts';
import type { GarmentDeeds } from '../../screens/garments/deeds.ts';
import { type Store, StoreError } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { notKept, part, rememberOpen } from './deeds.ts';
import { useShown } from './garments-shown.ts';
import { AGAIN_MS } from './keeper.ts';
import type { Chosen } from './restore-place.tsx';
import type { Work } from './watch.ts';

/** What comes of a deed: a garment that was made is opened; and what is said of it. */
interface Outcome {
  open?: string;
  said?: string | undefined;
}

interface Undo {
  words: string;
  deed: () => void;
}

const changes = () => part(import('./changes.ts'));
const files = () => part(import('./backup.ts'));

/** All garments as they are in the store, and everything that is done with them. */
export function useGarments(store: Store, address: Address, leave: () => void, backup?: File) {
  const { shown, show, compare } = useShown(store);
  const [said, setSaid] = useState<string>();
  const [undo, setUndo] = useState<Undo>();
  const [file, setFile] = useState(backup);
  const [work, setWork] = useState<Work>();

  const fail = (error: unknown) => notKept(error).then(setSaid);
  const before = useRef(Promise.resolve());
  const asking = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  /** Does one thing after another, then shows what is there; what went wrong is said. */
  const act = (deed: () => Promise<Outcome | undefined> | Promise<void>, back?: Undo) => {
    const doing = before.current.then(async () => {
      try {
        const { open, said } = (await deed()) ?? {};
        if (open !== undefined) return address.go(placeOfGarment(open));
        await show();
        setSaid(said);
        setUndo(back);
      } catch (error) {
        await fail(error);
        // Another tab, or the browser, may have left it otherwise than it is shown.
        await show().catch(() => undefined);
      }
    });
    // A bug in one deed must not keep the next from being done.
    before.current = doing.catch(() => undefined);
  };
  /** Shows what is there; a store that does not answer is asked again without a press. */
  const look = () => {
    const looking = before.current.then(async () => {
      try {
        await show();
        setSaid(undefined);
        setUndo(undefined);
      } catch (error) {
        if (error instanceof StoreError) asking.current = setTimeout(look, AGAIN_MS);
        await fail(error);
      }
    });
    before.current = looking.catch(() => undefined);
  };
  useEffect(() => {
    look();
    // Where it can't be compared the list is as good as it was.
    void before.current.then(compare).catch(() => undefined);
    return () => clearTimeout(asking.current);
  }, []);

  const bringBack = (garment: Listed) =>
    act(async () => (await changes()).bringBack(store, garment));
  const deeds: GarmentDeeds = {
    make: (name) => act(async () => ({ open: await (await changes()).make(store, name) })),
    demo: (which) => act(async () => ({ open: await (await changes()).makeDemo(store, which) })),
    open: (id) => {
      void rememberOpen(store, id);
      address.go(placeOfGarment(id));
    },
    rename: (garment, name) => act(async () => (await changes()).rename(store, garment, name)),
    copy: (garment) => act(async () => ({ open: await (await changes()).copy(store, garment) })),
    putAway: (garment) => {
      const back = { words: listWords.undo(garment.name), deed: () => bringBack(garment) };
      act(async () => (await changes()).putAway(store, garment), back);
    },
    bringBack,
    share: ({ id }) => address.go({ screen: 'garments', mode: 'share', draft: { g: id } }),
    backup: (way) => act(async () => ({ said: await (await files()).backUp(store, setWork, way) })),
    putOffBackup: () => act(async () => (await files()).putOffBackup(store, shown.garments)),
    restore: (chosen) => {
      // What was wrong with the last one isn't with this one.
      setSaid(undefined);
      setFile(chosen);
    },
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

/** The address of a garment: never what is typed on it. */
function placeOfGarment(id: string) {
  return { screen: 'garments', mode: 'open', draft: { g: id } };
}
