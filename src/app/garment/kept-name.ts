import { keptNameWords } from '#words/garment/kept-name-words.ts';
import type { Store } from '../../storage/store.ts';
import { loadOpened } from './opened.ts';

/** The garment and the name something is kept under, in words; undefined when it isn't there any more. */
export async function keptName(store: Store, place: string): Promise<string | undefined> {
  const from = await loadOpened(store, place);
  return from && keptNameWords(from.garment.name, from.kept.name);
}
