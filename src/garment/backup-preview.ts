import type { Garment } from './garment.ts';

/** What restoring one garment would do to what is here. */
export interface Preview {
  garment: Garment;
  /** It was changed after it was written to the file. */
  damaged: boolean;
  state: 'new' | 'same' | 'differs';
  /** When it differs: the backup's is the later one. */
  later: boolean;
  /** Names of what is kept, by what would become of it. */
  added: readonly string[];
  changed: readonly string[];
  lost: readonly string[];
}

/**
 * Compares a backup's garment with the one that is here; nothing is changed.
 * @param own the one that is here under the same id, if any is
 */
export function previewOf(own: Garment | undefined, garment: Garment, damaged: boolean): Preview {
  const names = (kept: Garment['kept']) => kept.map(({ name }) => name);
  if (!own) {
    const added = names(garment.kept);
    return { garment, damaged, state: 'new', later: true, added, changed: [], lost: [] };
  }
  const before = new Map(own.kept.map((kept) => [kept.id, JSON.stringify(kept)]));
  const after = new Set(garment.kept.map(({ id }) => id));
  const added = garment.kept.filter(({ id }) => !before.has(id));
  const changed = garment.kept.filter(
    (kept) => before.has(kept.id) && before.get(kept.id) !== JSON.stringify(kept),
  );
  const lost = own.kept.filter(({ id }) => !after.has(id));
  const same = own.name === garment.name && added.length + changed.length + lost.length === 0;
  return {
    garment,
    damaged,
    state: same ? 'same' : 'differs',
    later: garment.changed >= own.changed,
    added: names(added),
    changed: names(changed),
    lost: names(lost),
  };
}
