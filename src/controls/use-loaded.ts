import { useEffect, useState } from 'preact/hooks';

export type Loaded<Value> =
  | { state: 'loading' }
  | { state: 'here'; value: Value }
  /** `newer`: said where the host has a newer build; to try again is to load its page. */
  | { state: 'missing'; newer: string | undefined; again: () => void };

/** What has been loaded before is there at the first look. */
const loadedBefore = new WeakMap<() => unknown, unknown>();

/**
 * A part of the app that is fetched when first wanted; what can't be fetched
 * can be tried again.
 * @param load the same function as long as the same part is wanted; another one for another part
 */
export function useLoaded<Value>(load: () => Value | Promise<Value>): Loaded<Value> {
  const [{ failed, newer }, settle] = useState<{ failed?: unknown; newer?: string | undefined }>(
    {},
  );
  const here = loadedBefore.has(load);
  useEffect(() => {
    // As it was looked at: what came since then, for another who wanted it, is still to be shown.
    if (here) return;
    let gone = false;
    if (failed === load) {
      void newerOnHost().then((newer) => gone || settle({ failed, newer }));
    } else {
      loadAhead(load).then(
        () => gone || settle({}),
        () => gone || settle({ failed: load }),
      );
    }
    return () => {
      gone = true;
    };
  }, [load, failed]);
  if (here) return { state: 'here', value: loadedBefore.get(load) as Value };
  if (failed !== load) return { state: 'loading' };
  return {
    state: 'missing',
    newer,
    again: () => (newer ? location.reload() : settle({})),
  };
}

const newerOnHost = () =>
  import('./newer/newer-build.ts').then(
    (part) => part.newerOnHost(),
    () => undefined,
  );

/** Fetches a part before it is wanted, so that it is there at its first look. */
export async function loadAhead<Value>(load: () => Value | Promise<Value>): Promise<void> {
  loadedBefore.set(load, await load());
}
