import { promisifyRequest } from 'idb-keyval';

/**
 * The one place things are kept: IndexedDB, one record a key.
 *
 * Every change is one transaction with strict durability, and resolves only
 * when it is on the disk. Every read and write has a time limit; the app runs
 * without storage and says so.
 */
export interface Store {
  /** What is kept under a key, or undefined. Rejects with a StoreError. */
  load(key: string): Promise<unknown>;
  /**
   * Reads, or reads and writes, in one transaction, so that no other tab comes between. What is slow
   * is taken back; where it is being written down already it is waited for.
   */
  transact<Value>(
    mode: IDBTransactionMode,
    work: (kept: IDBObjectStore) => Promise<Value>,
  ): Promise<Value>;
  /**
   * Changes what is kept under a key, whatever another tab has kept meanwhile.
   * Undefined takes it away. What `by` throws is thrown on, and nothing is changed.
   * @param beside writes what else is written in the same step
   */
  change(key: string, by: (old: unknown) => unknown, beside?: Beside): Promise<void>;
}

/** Writes something that belongs to a record, once it is known what the record will be. */
export type Beside = (kept: IDBObjectStore, key: string, next: unknown) => void;

/** Outdated: a newer version of the app has changed the form of what is kept. */
export type StoreFault = 'refused' | 'full' | 'slow' | 'outdated';

/** Why something could not be kept or read. */
export class StoreError extends Error {
  readonly fault: StoreFault;
  constructor(fault: StoreFault, cause?: unknown) {
    super(`storage ${fault}`, { cause });
    this.fault = fault;
  }
}

const LIMIT_MS = 4000;

/** What a browser's own names of errors mean; all others, that it refuses. */
const FAULTS: Readonly<Record<string, StoreFault>> = {
  QuotaExceededError: 'full',
  VersionError: 'outdated',
};

/** Opens the store; nothing is asked of the browser before the first load or change. */
export function openStore(name = 'thumbrule'): Store {
  const use = strictStore(name);
  const transact: Store['transact'] = (mode, work) => within((limit) => use(mode, work, limit));
  return {
    transact,
    load: (key) => transact('readonly', (kept) => promisifyRequest(kept.get(key))),
    change: (...given) => transact('readwrite', (kept) => changed(kept, ...given)),
  };
}

/** Changes one record; done when its transaction is. */
async function changed(
  kept: IDBObjectStore,
  key: string,
  by: (old: unknown) => unknown,
  beside?: Beside,
) {
  const next = by(await promisifyRequest<unknown>(kept.get(key)));
  if (next === undefined) kept.delete(key);
  else kept.put(next, key);
  beside?.(kept, key, next);
  await promisifyRequest(kept.transaction);
}

/**
 * An idb-keyval store whose writes are on the disk before they are called done. What has not
 * begun, or not ended, when its limit rejects is not kept later either: it is said not to be.
 */
function strictStore(name: string) {
  let opened: Promise<IDBDatabase> | undefined;
  const forget = () => {
    opened = undefined;
  };
  const open = () => {
    if (!opened) {
      opened = openDatabase(name, forget);
      opened.catch(forget); // to be asked again the next time
    }
    return opened;
  };
  return async <Value>(
    mode: IDBTransactionMode,
    callback: (kept: IDBObjectStore) => Promise<Value>,
    limit: Promise<never>,
  ): Promise<Value> => {
    const db = await Promise.race([open(), limit]);
    const all = db.transaction('bench', mode, { durability: 'strict' });
    const done = callback(all.objectStore('bench'));
    return Promise.race([done, limit]).catch((error) => {
      try {
        all.abort();
      } catch {
        return done; // It is over already, or can't be stopped any more.
      }
      throw error;
    });
  };
}

async function openDatabase(name: string, onLost: () => void): Promise<IDBDatabase> {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => request.result.createObjectStore('bench');
  const db = await promisifyRequest(request);
  db.onclose = onLost;
  db.onversionchange = () => {
    db.close();
    onLost();
  };
  return db;
}

async function within<Value>(work: (limit: Promise<never>) => Promise<Value>): Promise<Value> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new StoreError('slow')), LIMIT_MS);
  });
  try {
    return await work(limit);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    throw new StoreError(FAULTS[error.name] ?? 'refused', error);
  } finally {
    clearTimeout(timer);
  }
}
