/** The stages of the work. */
const stages: Readonly<Record<string, string>> = {
  measure: 'Measure',
  cut: 'Cut',
  join: 'Join',
  'turn-up': 'Turn up',
  close: 'Close',
  edge: 'Edge',
};

interface Damage {
  kind: string;
  part?: string;
  version?: number;
}

/** Garments and what is kept on them. */
export const garmentWords = {
  title: 'Garments',
  about: 'What is kept here stays on this phone. A backup is one file, yours to put away.',
  none: 'Nothing is kept yet. Make a garment, or look at the invented one.',
  stages,
  stage: 'Stage',
  name: 'Name',
  garment: 'On which garment',
  newGarment: 'A new garment',
  make: 'Make',
  makeHint: 'such as: Grey waistcoat',
  demo: 'Show the invented one',
  rename: 'Rename',
  copy: 'Copy',
  copyOf: (name: string) => `${name}, copy`,
  remove: 'Delete',
  undo: (name: string) => `Undo: bring back ${name}`,
  keptCount: (count: number) => (count === 1 ? '1 kept' : `${count} kept`),
  open: 'Open',
  follow: 'Follow',
  made: (count: number) => (count === 1 ? '1 made elsewhere' : `${count} made elsewhere`),
  takeOff: 'Take off',
  deleted: 'Deleted, to be had back',
  bringBack: 'Bring back',
  setAside: (count: number) =>
    `${count === 1 ? 'One record' : `${count} records`} could not be read and ${count === 1 ? 'is' : 'are'} set aside, unchanged. Save ${count === 1 ? 'it' : 'them'} to a file for someone who can look.`,
  saveSetAside: 'Save what was set aside',
  backup: 'Save a backup',
  restore: 'Restore from a file',
  lastBackup: (when: string) => `Last backup: ${when}.`,
  noBackup: 'No backup yet. One file keeps what this phone could lose.',
  back: 'Back',
  keep: 'Keep on a garment',
  keepIt: 'Keep it',
  keptOn: (name: string, garment: string) => `Kept: ${name}, on ${garment}.`,
  nameMissing: 'Name: give it one, so that you find it again.',
  failed: {
    refused: 'Not kept: the browser refuses storage. Allow site data for this address.',
    full: 'Not kept: the phone’s storage is full. Free some space, then try again; nothing here is lost.',
    slow: 'Not kept: storage does not answer. Close other tabs of this app, then try again.',
    gone: 'Not kept: that garment was deleted in another tab. Choose another.',
    damaged: 'Not kept: that garment’s record can’t be read; it is set aside. Choose another.',
  },
  fileFault: {
    'too-large': 'The file is too large to be a backup. Choose another.',
    'not-json':
      'The file is cut off or damaged, or no backup. Choose another; nothing was changed.',
    foreign: 'The file is not a backup of this app. Choose another; nothing was changed.',
    newer: 'The file is from a newer version of this app. Update the app, then restore.',
    damaged: 'The file’s heading is damaged. Choose another; nothing was changed.',
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
  skip: 'Leave it',
  take: 'Take the file’s',
  both: 'Keep both',
  restoreNow: 'Restore what is chosen',
  cancel: 'Cancel',
  restored: (count: number) => `${count} restored.`,
  rejected: (place: number, name: string | undefined, damage: Damage) =>
    `Garment ${place} of the file${name === undefined ? '' : ` (${name})`} can’t be taken: ${
      damage.kind === 'newer'
        ? 'it is from a newer version'
        : `its ${damage.part ?? 'record'} is damaged`
    }.`,
};
