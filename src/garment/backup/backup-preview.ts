import { madeButNotIn } from '../actions/copy.ts';
import type { WithPhotos } from '../record/photos.ts';
import type { Garment, Kept } from '../record/record.ts';
import { same } from '../work-out/same.ts';

/** What restoring one garment would do to what is here. */
export interface Preview {
  garment: Garment;
  /** It was changed after it was written to the file. */
  damaged: boolean;
  state: 'new' | 'same' | 'differs';
  /** When it differs: the backup's is the later one. */
  later: boolean;
  /** Names of works, quantities and materials, by what would become of them. */
  added: readonly string[];
  changed: readonly string[];
  lost: readonly string[];
  /** How much is made here that isn't in it, or is otherwise. */
  unmade: number;
}

/**
 * Compares a backup's garment with the one that is here; nothing is changed.
 * @param own the one that is here under the same id, if any is
 */
export function previewOf(own: Garment | undefined, garment: Garment, damaged: boolean): Preview {
  const theirs = namedIn(garment);
  const none = { changed: [], lost: [], unmade: 0 };
  if (!own) {
    return { garment, damaged, state: 'new', later: true, added: namesOf(theirs), ...none };
  }
  const ours = namedIn(own);
  const changed = Object.entries(theirs).filter(
    ([id, one]) => Object.hasOwn(ours, id) && !same(ours[id], one),
  );
  const later = garment.changed >= own.changed;
  if (same(contentOf(own), contentOf(garment))) {
    return { garment, damaged, state: 'same', later, added: [], ...none };
  }
  return {
    ...{ garment, damaged, state: 'differs', later },
    added: namesOf(without(theirs, ours)),
    changed: namesOf(Object.fromEntries(changed)),
    lost: namesOf(without(ours, theirs)),
    unmade: madeButNotIn(own, garment).length,
  };
}

/** What is said of a material that works take by themselves has no name of its own. */
function namedIn({ works, quantities, materials = {} }: Garment): Kept {
  const named = Object.entries(materials).filter(([, one]) => namesOf({ one }).join('') !== '');
  return { ...Object.fromEntries(named), ...quantities, ...works };
}

function without(these: Kept, those: Kept): Kept {
  return Object.fromEntries(Object.entries(these).filter(([id]) => !Object.hasOwn(those, id)));
}

function namesOf(kept: Kept): string[] {
  return Object.values(kept).map((one) => {
    const { name } = Object(one) as { name?: unknown };
    return typeof name === 'string' ? name : '';
  });
}

/** All but when and how often it was changed, and the photos that a backup has with it. */
function contentOf({ changed: _, edits: __, photos: ___, ...content }: WithPhotos): object {
  return content;
}
