/** What the parts of a record are called. */
const parts = {
  id: 'number',
  name: 'name',
  invented: 'note of being invented',
  changed: 'time of the last change',
  edits: 'count of changes',
  kept: 'list of calculations',
  'taken-off': 'list of what was taken off',
  quantities: 'list of quantities',
  works: 'list of works',
  facts: 'list of facts',
  begun: 'list of what is begun',
  decisions: 'list of decisions',
  passed: 'list of what was passed over',
  materials: 'list of materials',
  lays: 'list of lays',
  notes: 'list of notes',
};

interface Damage {
  kind: string;
  part?: keyof typeof parts;
  /** Of a list, which one. */
  place?: number;
  version?: number;
}

const damagedPart = ({ part, place }: Damage) => {
  if (part === undefined) return 'record';
  if (place === undefined) return parts[part];
  return part === 'taken-off'
    ? `calculation ${place} of what was taken off`
    : `calculation ${place}`;
};

/** Restoring garments from a backup. */
export const garmentRestoreWords = {
  fileFault: {
    'too-large':
      'The file is larger than this browser can read in one piece. Choose another; nothing was changed.',
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
  unmade: (count: number) =>
    count === 1 ? '1 thing made here is not in it' : `${count} made here are not in it`,
  toBin: 'The one here would go to what is put away, to be had back.',
  skip: 'Leave it',
  take: 'Take the file’s',
  both: 'Keep both',
  restoreNow: 'Restore what is chosen',
  cancel: 'Cancel',
  look: 'Look at it',
  damaged:
    'Damaged: something in it was changed after it was written, perhaps a single digit. Look at its numbers, and take it only if they are right.',
  typed: (fields: readonly (readonly [string, readonly (string | undefined)[]])[]) =>
    fields
      .map(([key, parts]) =>
        [key, ...parts.map((part) => part ?? '(from the garment)')].join(' ').trim(),
      )
      .join(' · '),
  made: (places: readonly string[]) => `made: ${places.join(' · ')}`,
  few: (names: string, more: number) => (more === 0 ? names : `${names} and ${more} more`),
  lacks: (here: number, written: number) =>
    `The file is not whole: it was written with ${written === 1 ? '1 garment' : `${written} garments`}, and ${here} can be read.`,
  moreRejected: (count: number) => `${count} more can’t be taken.`,
  setAside: (count: number) =>
    `${count === 1 ? 'One record' : `${count} records`} in it could not be read where it was written, nor here. Restoring puts ${count === 1 ? 'it' : 'them'} with what is set aside, as ${count === 1 ? 'it is' : 'they are'}.`,
  rejected: (place: number, name: string | undefined, damage: Damage) =>
    `Garment ${place} of the file${name === undefined ? '' : ` (${name})`} can’t be taken: ${
      damage.kind === 'newer'
        ? 'it is from a newer version'
        : `its ${damagedPart(damage)} is damaged`
    }.`,
};
