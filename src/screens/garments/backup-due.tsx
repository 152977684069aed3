import { garmentDueWords as words } from '#words/garment-due-words.ts';
import { garmentListWords as listWords } from '#words/garment-list-words.ts';
import type { GarmentDeeds } from './deeds.ts';

interface Props {
  changes: number;
  days: number;
  /** There has been a backup before. */
  ever: boolean;
  deeds: GarmentDeeds;
}

/** A quiet line that asks for a backup, and can be put off. */
export function BackupDue({ changes, days, ever, deeds }: Props) {
  return (
    <div class="due">
      <p>{words.due(changes, days, ever)}</p>
      <div class="keys">
        <button type="button" class="plain" onClick={deeds.backup}>
          {listWords.backup}
        </button>
        <button type="button" class="plain" onClick={deeds.putOffBackup}>
          {words.later}
        </button>
      </div>
    </div>
  );
}
