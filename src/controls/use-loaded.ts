import { useEffect, useState } from 'preact/hooks';

export type Loaded<Value> =
  | { state: 'loading' }
  | { state: 'here'; value: Value }
  | { state: 'missing'; again: () => void };

/** What has been loaded before is there at the first look. */
const loadedBefore = new WeakMap<() => unknown, unknown>();

/**
 * A part of the app that is fetched when first wanted; what can't be fetched
 * can be tried again.
 * @param load the same function as long as the same part is wanted
 */
export function useLoaded<Value>(load: () => Value | Promise<Value>): Loaded<Value> {
  const [tries, setTries] = useState(0);
  const [loaded, setLoaded] = useState<Loaded<Value>>(() => atHand(load));
  useEffect(() => {
    if (loadedBefore.has(load)) return;
    let gone = false;
    const settle = (next: Loaded<Value>) => {
      if (!gone) setLoaded(next);
    };
    Promise.resolve(load()).then(
      (value) => {
        loadedBefore.set(load, value);
        settle({ state: 'here', value });
      },
      () => settle({ state: 'missing', again: () => setTries((n) => n + 1) }),
    );
    return () => {
      gone = true;
    };
  }, [load, tries]);
  return loaded;
}

/** Fetches a part before it is wanted, so that it is there at its first look. */
export async function loadAhead<Value>(load: () => Promise<Value>): Promise<void> {
  loadedBefore.set(load, await load());
}

function atHand<Value>(load: () => Value | Promise<Value>): Loaded<Value> {
  if (loadedBefore.has(load)) return { state: 'here', value: loadedBefore.get(load) as Value };
  return { state: 'loading' };
}
