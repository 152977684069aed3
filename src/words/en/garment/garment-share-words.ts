/** Handing a garment on, as a file or as a link. */
export const garmentShareWords = {
  title: 'Hand it on',
  of: (name: string) => `Hand on ${name}`,
  about: 'It goes only to whom you give it. Whoever opens it keeps a copy of their own.',
  along: 'What goes along',
  bodies: (count: number) =>
    count === 1
      ? 'The measure of a body, with its name'
      : `${count} measures of a body, with names`,
  notes: (count: number) => (count === 1 ? 'The note' : `${count} notes`),
  times: 'When each was done',
  made: 'What is made',
  madeWays: {
    notes: 'as notes: to make it anew',
    goOn: 'as made: the same garment, to go on',
  },
  wasMade: (numbers: readonly string[], more: number) =>
    `was made ${numbers.join(' · ')}${more > 0 ? ` and ${more} more` : ''}`,
  typedInPlace: (count: number) =>
    count === 1
      ? 'One number that took a measure of a body holds its value of today.'
      : `${count} numbers that took measures of a body hold their values of today.`,
  numbers: (names: readonly string[], more: number) =>
    `Numbers not said to be of a body go along: ${names.join(', ')}${more > 0 ? `, and ${more} more` : ''}. If one is, say so among the measures first.`,
  photosStay: 'Photos stay on this phone.',
  logStays: 'What could be taken back here can’t be there.',
  pending: 'A number is still being typed: what it was before goes along.',

  link: 'As a link',
  linkLong: (length: number, most: number) =>
    `As a link it would have ${length} characters, and ${most} are the most. Hand on the file.`,
  linkIs: (length: number, most: number) =>
    `${length} of ${most} characters. The garment is in the link itself: no server has it.`,
  copy: 'Copy the link',
  copied: 'The link is copied.',
  shareLink: 'Share the link',
  file: 'As a file',
  save: 'Save the file',
  share: 'Share the file',
  failed: 'It could not be handed over. Nothing was changed; try again, or save the file.',
  back: 'Back',
};

/** A garment that was handed on, before it is kept. */
export const garmentReceiveWords = {
  title: 'A garment was handed on',
  reading: 'It is being read…',
  about: 'Nothing is kept yet, and nothing here is replaced.',
  invented: 'Invented, to show the app with.',
  works: (count: number) => (count === 1 ? '1 work' : `${count} works`),
  measures: (count: number) => (count === 1 ? '1 measure' : `${count} measures`),
  made: (count: number) => `${count} made`,
  notes: (count: number) => (count === 1 ? '1 note' : `${count} notes`),
  holds: (parts: readonly string[]) =>
    parts.length === 0 ? 'Nothing is on it.' : parts.join(', '),
  more: (count: number) => `and ${count} more`,
  left: {
    bodies: (count: number) =>
      count === 1
        ? 'A measure of a body was left out.'
        : `${count} measures of a body were left out.`,
    typed: (count: number) =>
      count === 1
        ? 'One number holds the value it had in its place.'
        : `${count} numbers hold the values they had in their place.`,
    notes: (count: number) =>
      count === 1 ? 'A note was left out.' : `${count} notes were left out.`,
    photos: (count: number) =>
      count === 1 ? 'A photo was left out.' : `${count} photos were left out.`,
    facts: (count: number) =>
      count === 1 ? 'What was made is a note.' : `${count} that were made are notes.`,
  },
  damaged:
    'Something in it was changed after it was written. Look at its numbers before you trust them.',
  keep: 'Keep it as a new garment',
  leave: 'Leave it',
  faults: {
    newer:
      'It is from a newer version of this app. Update the app, then open it again. Nothing was kept.',
    damaged: 'It is cut off or damaged. Ask for it again, best as a file. Nothing was kept.',
    'too-large': 'It is more than a garment can be. Nothing was kept.',
    'cant-unpack':
      'This browser can’t unpack it. Update the browser, or ask for the file. Nothing was kept.',
    none: 'No garment came along. Open the file or the link again. Nothing was kept.',
  },
};
