import type { Store } from '../../storage/store.ts';
import { type TapeStored, watchEngine } from '../tape/engine-watch.ts';
import { holdIcon } from './icon.ts';
import type { OfflineBlock, Taking } from './news.ts';
import { watchOffline } from './offline.ts';

/** How the app stands without a connection. */
export interface Offline {
  ready?: boolean;
  /** Ready for the first time on this phone: said once. */
  firstReady?: boolean;
  block?: OfflineBlock | undefined;
  /** Whether tapes can be read without a connection, once everything else can. */
  tape?: TapeStored;
  /** Takes the newer version that waits, if one does. */
  update?: (() => void) | undefined;
  /** It is being taken. */
  taking?: Taking | undefined;
}

const KEY = 'said-ready';

/**
 * Watches over the app's being on the phone, from the start to the end.
 * @param flush puts away what was typed before the page is loaded anew
 * @param change called with what has changed
 */
export function watch(store: Store, flush: () => void, change: (news: Offline) => void): void {
  // Once a part can't be fetched any more, neither can what says why.
  import('../../controls/newer/newer-build.ts').catch(() => undefined);
  void holdIcon();
  let settle = () => {};
  const settled = new Promise<void>((done) => {
    settle = done;
  });
  watchOffline({
    onReady: () => {
      change({ ready: true, block: undefined });
      void settled.then(() => watchEngine((tape) => change({ tape })));
      void sayOnce(store).then((firstReady) => change({ firstReady }));
    },
    onUpdate: (update) => change({ update, taking: undefined }),
    onTaking: (taking) => change({ taking }),
    onBlocked: (block) => change({ block }),
    onSettled: settle,
    flush,
  });
}

/** True once on this phone. Where nothing can be kept it is never said, rather than each time. */
async function sayOnce(store: Store): Promise<boolean> {
  let first = false;
  try {
    await store.change(KEY, (said) => {
      first = said !== true;
      return true;
    });
  } catch {
    return false;
  }
  return first;
}
