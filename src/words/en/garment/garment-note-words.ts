/** What the maker notes at a step, or at a work. */
export const garmentNoteWords = {
  title: (where: string) => `Note: ${where}`,
  about: 'It stays on this phone and in backups. It is in no link or file unless you tick it.',
  text: 'What to remember',
  take: 'Take a photo',
  choose: 'Choose a photo',
  opening: 'Opening the photo…',
  photo: (where: string) => `Photo at ${where}`,
  lost: 'There is a photo here, but it isn’t on this phone: restore a backup that has it.',
  unread:
    'There is a photo here, but storage does not answer just now. Close other tabs of this app, then open this note again.',
  takeOff: 'Take the photo off',
  keep: 'Keep the note',
  empty: 'Take the note off',
  undo: 'Take the last change back',
  back: 'Back',
  whole: (work: string) => `The whole work: ${work}`,
  step: (step: string) => `This step: ${step}`,
  which: 'Where it belongs',
};
