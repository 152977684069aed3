import { changeGarment, type Logged } from '../../storage/garments.ts';
import { type Store, StoreError } from '../../storage/store.ts';

/** Changes a garment as another tab may have left it; throws a GarmentError where that is refused. */
export type Deed = (now: Logged) => Logged;

/** What a keeper has to say when something of it changes. */
export interface KeeperNews {
  /** A deed that is on the disk now, and the garment with it. */
  kept?: { deed: Deed; now: Logged };
  /** Why a deed was refused, for good. */
  refused?: unknown;
}

/**
 * Keeps the changes of one garment, one after another, each as soon as the store takes
 * it. What the store can't take now is held and tried again, also when the screen that
 * made it is left: it lasts as long as the page, which warns before it is closed.
 */
export interface Keeper {
  /** Deeds that are not on the disk yet, the oldest first. */
  waiting(): readonly Deed[];
  /** Why the oldest of them could not be kept; undefined when that has not been tried. */
  trouble(): StoreError | undefined;
  add(deed: Deed): void;
  /** Tries the oldest one now. */
  again(): void;
  listen(hear: (news: KeeperNews) => void): () => void;
}

/** How long until what could not be kept, or read, is tried again. */
export const AGAIN_MS = 4000;

const keepers = new WeakMap<Store, Map<string, Keeper>>();

/** The one keeper of a garment. */
export function keeperOf(store: Store, id: string): Keeper {
  const all = keepers.get(store) ?? new Map<string, Keeper>();
  keepers.set(store, all);
  const keeper = all.get(id) ?? createKeeper(store, id);
  all.set(id, keeper);
  return keeper;
}

/** Every keeper there has been since the page was opened. */
export function keepersOf(store: Store): Keeper[] {
  return [...(keepers.get(store)?.values() ?? [])];
}

function createKeeper(store: Store, id: string): Keeper {
  const waiting: Deed[] = [];
  const hearers = new Set<(news: KeeperNews) => void>();
  let trouble: StoreError | undefined;
  let busy = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (news: KeeperNews) => {
    for (const hear of hearers) hear(news);
  };

  const keepOldest = async (deed: Deed) => {
    let news: KeeperNews;
    try {
      news = { kept: { deed, now: await changeGarment(store, id, deed) } };
      trouble = undefined;
    } catch (error) {
      if (error instanceof StoreError) throw error;
      news = { refused: error };
    }
    waiting.shift();
    tell(news);
  };
  const work = async () => {
    if (busy) return;
    busy = true;
    clearTimeout(timer);
    try {
      for (let deed = waiting[0]; deed; deed = waiting[0]) await keepOldest(deed);
      removeEventListener('beforeunload', warn);
    } catch (error) {
      trouble = error as StoreError;
      timer = setTimeout(() => void work(), AGAIN_MS);
      tell({});
    }
    busy = false;
  };
  return {
    waiting: () => waiting,
    trouble: () => trouble,
    add(deed) {
      waiting.push(deed);
      addEventListener('beforeunload', warn);
      // At once, before it is painted: what a crash takes must be as little as can be.
      void work();
    },
    again: () => void work(),
    listen(hear) {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
  };
}

/** Closing the page would lose what only it holds. */
function warn(event: BeforeUnloadEvent): void {
  event.preventDefault();
}
