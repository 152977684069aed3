import type { Garment } from '../record/record.ts';
import type { BackupStand } from './backup-due.ts';

type Held = Pick<Garment, 'id' | 'edits'> & { facts: number };

/**
 * What a backup holds once garments of a file are restored: they are in that file.
 *
 * @param last what was known before; a stand of times only stays as it is
 * @param at when the file was written, in ms since 1970
 */
export function standRestored(
  last: BackupStand | undefined,
  garments: readonly Held[],
  at: number,
): BackupStand {
  const now = standOf(garments, last?.at ?? at);
  if (!last) return now;
  if (!last.edits) return last;
  return { ...now, edits: { ...last.edits, ...now.edits }, facts: { ...last.facts, ...now.facts } };
}

/** What a backup that is made now, or put off, holds of each garment. */
export function standOf(garments: readonly Held[], at: number): BackupStand {
  return {
    at,
    edits: Object.fromEntries(garments.map(({ id, edits }) => [id, edits])),
    facts: Object.fromEntries(garments.map(({ id, facts }) => [id, facts])),
  };
}
