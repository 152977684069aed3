import { garmentDueWords as words } from '#words/garment/garment-due-words.ts';
import { garmentListWords as listWords } from '#words/garment/garment-list-words.ts';
import { adopt } from '../../controls/adopt.ts';
import type { Due } from '../../garment/backup/backup-due.ts';
import css from './backup-due.css?inline';
import type { GarmentDeeds } from './deeds.ts';

adopt(css);

interface Props extends Due {
  /** There has been a backup before. */
  ever: boolean;
  deeds: Pick<GarmentDeeds, 'backup' | 'putOffBackup'>;
}

/** A quiet line that asks for a backup, and can be put off. */
export function BackupDue({ ever, deeds, ...due }: Props) {
  return (
    <div class="due">
      <p>{words.due(due, ever)}</p>
      <div class="keys">
        <button type="button" class="plain" onClick={() => deeds.backup('save')}>
          {listWords.backup}
        </button>
        {typeof navigator.share === 'function' && (
          <button type="button" class="plain" onClick={() => deeds.backup('share')}>
            {listWords.shareBackup}
          </button>
        )}
        <button type="button" class="plain" onClick={deeds.putOffBackup}>
          {words.later}
        </button>
      </div>
    </div>
  );
}
