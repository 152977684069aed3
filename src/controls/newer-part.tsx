import { useEffect, useState } from 'preact/hooks';

import { loadNewer, type newerWords } from '#words/phone/newer-words.ts';
import { askNewer } from './newer/newer-ask.ts';

/**
 * What to say where something could not be fetched because the app's host has a newer build.
 * Undefined as long as nothing is missing, that isn't known, or it has another cause.
 */
export function useNewer(what: keyof typeof newerWords, isMissing: boolean): string | undefined {
  const [newer, setNewer] = useState<string>();
  useEffect(() => {
    setNewer(undefined);
    if (!isMissing) return;
    let gone = false;
    void askNewer(what).then((said) => gone || setNewer(said));
    return () => {
      gone = true;
    };
  }, [what, isMissing]);
  return isMissing ? newer : undefined;
}

/** The way to the newer build. */
export function LoadNewer() {
  return (
    <button type="button" class="plain main" onClick={() => location.reload()}>
      {loadNewer}
    </button>
  );
}
