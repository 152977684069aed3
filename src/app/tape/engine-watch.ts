import { whenIdle } from '../offline/when-idle.ts';
import { fetchEngine, hasEngine } from './engine-files.ts';
import { inTurn } from './engine-lock.ts';

/** Whether tapes can be read without a connection: yes, soon, or not yet. */
export type TapeStored = 'here' | 'coming' | 'missing';

/**
 * Stores what reads a tape once nothing else is to be done, and says how that stands. A download
 * that fails goes on with the next connection or start. A phone set to save data is left to fetch
 * it when a tape is first read. Of several pages one does, and none while a newer build takes over:
 * a request in that moment would hold it up.
 */
export function watchEngine(change: (stored: TapeStored) => void): void {
  let running = false;
  const store = async () => {
    if (running) return;
    running = true;
    change('coming');
    await inTurn(fetchEngine).catch(() => undefined);
    // It may all have arrived and found no room.
    change((await hasEngine()) ? 'here' : 'missing');
    running = false;
  };
  const start = async () => {
    if (await hasEngine()) return change('here');
    if (savesData()) return change('missing');
    window.addEventListener(
      'online',
      () => void hasEngine().then((has) => (has ? undefined : store())),
    );
    whenIdle(() => void store());
  };
  void start();
}

function savesData(): boolean {
  const { connection } = navigator as { connection?: { saveData?: boolean } };
  return connection?.saveData === true;
}
