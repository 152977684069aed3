import { demoWords } from '#words/garment/demo-words.ts';
import { demoGarment } from '../../src/garment/actions/demo.ts';
import { WAISTCOAT } from '../../src/garment/actions/demo-waistcoat.ts';
import type { Fields, Garment, Link, Part, Work } from '../../src/garment/record/record.ts';
import { KNOWN } from '../garment/trial/known.ts';

/** So many works: those of the demo, linked among themselves, over and over. What is made is of the first. */
export function garmentWith(count: number, id: string, name: string): Garment {
  const demo = demoGarment(WAISTCOAT, demoWords.waistcoat, id, 1, KNOWN);
  const own = Object.entries(demo.works) as [string, Work][];
  const works = Array.from({ length: count }, (_, i): [string, Work] => {
    const [key, work] = own[i % own.length] ?? ['', {} as Work];
    const round = Math.floor(i / own.length);
    const copy = { ...work, rank: i + 1, fields: inRound(work.fields, round) };
    return [inRoundId(key, round), copy];
  });
  return { ...demo, name, works: Object.fromEntries(works) };
}

function inRound(fields: Fields, round: number): Fields {
  const part = (one: Part): Part =>
    'link' in one ? { ...one, link: linkIn(one.link, round) } : one;
  return Object.fromEntries(Object.entries(fields).map(([key, all]) => [key, all.map(part)]));
}

function linkIn(link: Link, round: number): Link {
  return 'work' in link ? { ...link, work: inRoundId(link.work, round) } : link;
}

function inRoundId(id: string, round: number): string {
  return round === 0 ? id : `${id}-${round}`;
}

interface Copies {
  garment: Garment;
  /** Numbers of the copies: from this one, so many. The one of number 0 is called as it is. */
  from?: number;
  count: number;
}

/** Writes records as the app would, with no garment open. Runs in the page. */
export function putGarments({ garment, from = 0, count }: Copies): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open('thumbrule', 1);
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('bench', 'readwrite');
      const store = change.objectStore('bench');
      for (let i = from; i < from + count; i++) {
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
