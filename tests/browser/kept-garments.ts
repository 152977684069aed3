import type { Page } from 'playwright-core';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Garment } from '../../src/garment/record/record.ts';

/** What a device holds of garments: those that pass the app's own check, and how many don't. */
export interface OnDevice {
  garments: readonly Garment[];
  damaged: number;
}

/** Reads the store past the app, which must have been opened on the page. */
export async function keptGarments(page: Page): Promise<OnDevice> {
  const records = await page.evaluate(
    () =>
      new Promise<unknown[]>((done, failed) => {
        const opening = indexedDB.open('thumbrule', 1);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('bench').objectStore('bench');
          const all = store.getAll(IDBKeyRange.bound('garment:', 'garment:\uffff'));
          all.onerror = () => failed(all.error);
          all.onsuccess = () => {
            opening.result.close();
            done(all.result);
          };
        };
      }),
  );
  const checked = records.map(readRecord);
  const garments = checked.flatMap((one) => (one.ok ? [one.value] : []));
  return { garments, damaged: checked.length - garments.length };
}
