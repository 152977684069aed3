/** The list of garments, and the one that is open. */
export const garmentListWords = {
  about: 'What is kept here stays on this phone. A backup is one file, yours to put away.',
  none: 'Nothing is kept yet. Make a garment, or look at the invented one.',
  invented: 'Invented, to show the app with: no one’s measures.',
  demo: 'Show the invented one',
  copy: 'Copy',
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
  backup: 'Save a backup',
  restore: 'Restore from a file',
  lastBackup: (when: string) => `Last backup: ${when}.`,
  noBackup: 'No backup yet. One file keeps what this phone could lose.',
};
