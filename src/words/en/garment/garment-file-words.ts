/** Writing garments to a file, reading them from one, and putting them beside others. */
export const garmentFileWords = {
  copyOf: (name: string) => `${name}, copy`,
  writing: 'Writing the backup',
  reading: 'Reading the file',
  restoring: 'Restoring',
  part: (done: number, of: number) => `${Math.floor((100 * done) / Math.max(1, of))} %`,
  stop: 'Stop',
  notWritten: 'Stopped: no file was written.',
  notHandedOver: 'Called off: the backup went nowhere.',
  savedInstead:
    'This phone hands on no such file: the backup is saved on it. Put it elsewhere, too.',
  notRead: 'Stopped: nothing was changed.',
  notRemembered:
    'The file is written, but storage did not take down when: you will be asked for a backup again.',
  restored: (count: number) => `${count} restored.`,
  restoredUntil: (count: number, of: number) =>
    `Stopped: ${count} of ${of} restored, the others are as they were.`,
  restoredSome: (count: number, of: number, why: string) =>
    `${count} of ${of} restored, the others are as they were. ${why}`,
};
