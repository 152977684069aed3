import { followedChange } from '../../garment/followed-change.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import { changeGarment, GarmentError } from '../../storage/garments.ts';
import { type Store, StoreError } from '../../storage/store.ts';

/** A change of what is followed on a garment. */
export interface Change {
  /** What is followed, as it was seen. */
  seen: Kept;
  by(kept: Kept): Kept;
}

/** What a keeper has to say when something of it changes. */
export interface KeeperNews {
  /** A change that is on the disk now, and the garment with it. */
  kept?: { change: Change; garment: Garment };
  /** Why a change was refused, for good. */
  refused?: unknown;
}

/**
 * Keeps the changes of one garment, one after another, each as soon as the store takes
 * it. What the store can't take now is held and tried again, also when the screen that
 * made it is left: it lasts as long as the page, which warns before it is closed.
 */
export interface Keeper {
  /** Changes that are not on the disk yet, the oldest first. */
  waiting(): readonly Change[];
  /** Why the oldest of them could not be kept; undefined when that has not been tried. */
  trouble(): StoreError | undefined;
  add(change: Change): void;
  /** Tries the oldest one now. */
  again(): void;
  listen(hear: (news: KeeperNews) => void): () => void;
}

/**
 * The garment with a change.
 * @throws GarmentError when it is refused
 */
export function changedBy(garment: Garment, { seen, by }: Change): Garment {
  const now = followedChange(garment, seen, by, Date.now());
  if (typeof now === 'object') return now;
  throw new GarmentError(now === 'gone' ? 'off' : now);
}

/** How long until what could not be kept is tried again. */
const AGAIN_MS = 4000;

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
  const waiting: Change[] = [];
  const hearers = new Set<(news: KeeperNews) => void>();
  let trouble: StoreError | undefined;
  let busy = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (news: KeeperNews) => {
    for (const hear of hearers) hear(news);
  };

  const keepOldest = async (change: Change) => {
    let stored: Garment | undefined;
    try {
      await changeGarment(store, id, (old) => {
        stored = changedBy(old, change);
        return stored;
      });
    } catch (error) {
      if (error instanceof StoreError) throw error;
      waiting.shift();
      tell({ refused: error });
      return;
    }
    waiting.shift();
    trouble = undefined;
    tell(stored ? { kept: { change, garment: stored } } : {});
  };
  const work = async () => {
    if (busy) return;
    busy = true;
    clearTimeout(timer);
    try {
      for (let change = waiting[0]; change; change = waiting[0]) await keepOldest(change);
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
    add(change) {
      waiting.push(change);
      addEventListener('beforeunload', warn);
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
