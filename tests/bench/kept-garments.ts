import { newGarment } from '../../src/garment/record/new-garment.ts';
import type { Fact, Garment, TextPart, Work } from '../../src/garment/record/record.ts';

const typed = (text: string): TextPart[] => [{ text, unit: 'cm' }];

/** Rows of seven closures along one front edge, every other one with two made, the second elsewhere. */
export function garmentWith(count: number, id: string, name: string): Garment {
  const works = Array.from({ length: count }, (_, i): [string, Work] => [
    `k${i}`,
    {
      ...{ name: `Kept ${i + 1}`, calculation: 'closures', rank: i + 1 },
      fields: {
        ...{ opening: [{ link: { quantity: 'front' } }], count: typed('7') },
        ...{ top: typed('1.2'), bottom: typed('2.5'), by: typed('count'), ends: typed('given') },
      },
    },
  ]);
  const facts = works.flatMap(([work], i) =>
    i % 2 === 0 ? [0, 1].map((rank): [string, Fact] => [`${work}-${rank}`, made(work, rank)]) : [],
  );
  const front = { name: 'Front edge', kind: 'length', rank: 0, parts: typed('46.3') };
  const maps = { quantities: { front }, works: Object.fromEntries(works) };
  return { ...newGarment(id, name, 1), ...maps, facts: Object.fromEntries(facts) };
}

function made(work: string, rank: number): Fact {
  const plan = (1.2 + 7.1 * rank) * 80_000;
  const at = { shown: Math.round(plan), plan, tape: 8000, rule: 1, read: '', when: 1 };
  const mark = { rank, of: 7, asked: plan };
  return { home: `${work}||marks`, ...at, mark, ...(rank === 1 && { measured: 672_000 }) };
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
