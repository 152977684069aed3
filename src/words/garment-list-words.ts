/** The list of garments, and the one that is open. */
export const garmentListWords = {
  about: 'What is kept here stays on this phone. A backup is one file, yours to put away.',
  none: 'Nothing is kept yet. Make a garment, or look at the invented one.',
  invented: 'Invented, to show the app with: no one’s measures.',
  demo: 'Show the invented one',
  copy: 'Copy',
  copyOf: (name: string) => `${name}, copy`,
  undo: (name: string) => `Undo: bring back ${name}`,
  undoTakeOff: (name: string) => `Undo: put ${name} back on`,
  keptCount: (count: number) => (count === 1 ? '1 kept' : `${count} kept`),
  nothingKept: 'Nothing is kept on it yet: open a calculation, then press Keep.',
  open: 'Open',
  follow: 'Follow',
  followAll: 'Follow all marks, in order',
  made: (made: number, marks: number, extra: number) =>
    `${made} of ${marks} made${extra === 0 ? '' : `, and ${extra} more than asked for`}`,
  elsewhere: (count: number) => `${count} as made`,
  takenOff: 'Taken off, to be put back',
  putBack: 'Put back on',
  deleted: 'Deleted, to be had back',
  setAside: (count: number) =>
    `${count === 1 ? 'One record' : `${count} records`} could not be read and ${count === 1 ? 'is' : 'are'} set aside, unchanged. Save ${count === 1 ? 'it' : 'them'} to a file for someone who can look.`,
  saveSetAside: 'Save what was set aside',
  backup: 'Save a backup',
  restore: 'Restore from a file',
  lastBackup: (when: string) => `Last backup: ${when}.`,
  noBackup: 'No backup yet. One file keeps what this phone could lose.',
  backupDue: (changes: number, days: number, ever: boolean) =>
    `${changes === 1 ? '1 change' : `${changes} changes`} ${
      days === 0 ? '' : `in ${days === 1 ? '1 day' : `${days} days`} `
    }${ever ? 'since the last backup' : 'in no backup yet'}.`,
  later: 'Not now',
  restored: (count: number) => `${count} restored.`,
};
