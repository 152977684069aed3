interface Damage {
  kind: string;
  part?: string;
  version?: number;
}

/** Restoring garments from a backup. */
export const garmentRestoreWords = {
  fileFault: {
    'too-large': 'The file is too large to be a backup. Choose another.',
    'not-json':
      'The file is cut off or damaged, or no backup. Choose another; nothing was changed.',
    foreign: 'The file is not a backup of this app. Choose another; nothing was changed.',
    newer: 'The file is from a newer version of this app. Update the app, then restore.',
    damaged: 'The file’s heading is damaged. Choose another; nothing was changed.',
    unread: 'The file could not be opened. Choose it again, or another; nothing was changed.',
  },
  preview: 'What restoring would change',
  previewState: {
    new: 'Not here yet',
    same: 'Just as it is here',
    differs: 'Differs from the one here',
  },
  previewLater: (later: boolean) =>
    later ? 'the file’s is the later one' : 'the one here is the later one',
  added: (names: string) => `would add: ${names}`,
  changed: (names: string) => `would change: ${names}`,
  lost: (names: string) => `would take away: ${names}`,
  toBin: 'The one here would go to what is deleted, to be had back.',
  skip: 'Leave it',
  take: 'Take the file’s',
  both: 'Keep both',
  restoreNow: 'Restore what is chosen',
  cancel: 'Cancel',
  rejected: (place: number, name: string | undefined, damage: Damage) =>
    `Garment ${place} of the file${name === undefined ? '' : ` (${name})`} can’t be taken: ${
      damage.kind === 'newer'
        ? 'it is from a newer version'
        : `its ${damage.part ?? 'record'} is damaged`
    }.`,
};
