import { draftOf } from './draft.ts';
import type { Garment, Kept } from './garment.ts';
import { typingOf } from './in-the-way.ts';

/** Where something is kept, as an address holds it. */
export function placeOf(garment: string, kept: string): string {
  return `${garment}.${kept}`;
}

/**
 * The address of something kept: its calculation, as typed, where it is kept, and what was
 * typed there when it was opened.
 * @param plans of its runs, which its measures belong to
 */
export function addressOf(garment: Garment, kept: Kept, plans?: readonly string[]) {
  return {
    screen: kept.calculation,
    mode: '',
    draft: {
      ...draftOf(kept, plans),
      kept: placeOf(garment.id, kept.id),
      seen: typingOf(kept.draft),
    },
  };
}
