import type { Garment } from '../record/record.ts';
import type { BackupStand } from './backup-due.ts';

/** What a backup that is made now, or put off, holds of each garment. */
export function standOf(
  garments: readonly (Pick<Garment, 'id' | 'edits'> & { facts: number })[],
  at: number,
): BackupStand {
  return {
    at,
    edits: Object.fromEntries(garments.map(({ id, edits }) => [id, edits])),
    facts: Object.fromEntries(garments.map(({ id, facts }) => [id, facts])),
  };
}
