import { withKept } from '../../src/garment/changes.ts';
import { type Garment, type Kept, newGarment, STAGES } from '../../src/garment/garment.ts';

/** Seven planned marks each, some made elsewhere, over all stages of the work. */
export function garmentWith(count: number, id: string, name: string): Garment {
  const kept = Array.from({ length: count }, (_, i): Kept => {
    const stage = STAGES[i % STAGES.length] ?? 'close';
    const marks = Array.from({ length: 7 }, (_, j) => [String(j + 1), (j + 1) * 568_000]);
    const made = i % 2 === 0 ? { '1': '', '2': '15 cm' } : {};
    const runs = [{ planned: Object.fromEntries(marks), made }];
    const draft = { u: 'cm', opening: '46.3', count: '7', top: '1.2', bottom: '2.5' };
    return { id: `k${i}`, name: `Kept ${i + 1}`, stage, calculation: 'closures', draft, runs };
  });
  return kept.reduce((so, one) => withKept(so, one, 2), newGarment(id, name, 1));
}

interface Copies {
  garment: Garment;
  /** How many of it there are to be, the second and further ones numbered. */
  count: number;
}

/** Writes records as an older build would, with no garment open. Runs in the page. */
export function putGarments({ garment, count }: Copies): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open('thumbrule', 1);
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('bench', 'readwrite');
      const store = change.objectStore('bench');
      for (let i = 0; i < count; i++) {
        const number = i === 0 ? '' : ` ${i + 1}`;
        const copy = { ...garment, id: garment.id + number, name: garment.name + number };
        store.put(copy, `garment:${copy.id}`);
      }
      store.put('', 'open-garment');
      change.onerror = () => failed(change.error);
      change.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}
