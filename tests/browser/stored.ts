import type { Page } from 'playwright-core';

/** A record of the app's store as it is on the device by now; undefined where there is none. */
export function stored(page: Page, key: string): Promise<unknown> {
  return page.evaluate(
    (wanted) =>
      new Promise<unknown>((done, failed) => {
        const opening = indexedDB.open('thumbrule', 1);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('bench').objectStore('bench').get(wanted);
          asked.onerror = () => failed(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result);
          };
        };
      }),
    key,
  );
}

/** Puts a record into the app's store, past the app, which must have been opened on the page. */
export function store(page: Page, key: string, record: unknown): Promise<void> {
  return page.evaluate(
    ([at, kept]) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('thumbrule', 1);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const change = opening.result.transaction('bench', 'readwrite');
          change.objectStore('bench').put(kept, at);
          change.onerror = () => failed(change.error);
          change.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    [key, record] as const,
  );
}
