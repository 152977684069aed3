/** What is named where its own name can't be had. */
export const namelessWords = {
  quantity: 'a number without a name',
  work: 'a work without a name',
  gone: 'something that isn’t in this garment any more',
  output: 'a number of it',
  field: 'a field of it',
  material: 'what is said of a material',
};

/** Names in the place of what only the app calls things by. */
export const placeInGarment = {
  work: (name: string, side: string) => (side === '' ? name : `${name}, ${side}`),
  part: (work: string, part: string) => `${work} · ${part}`,
  taken: (name: string) => `[${name}]`,
  path: (names: readonly string[]) => names.join(' → '),
  by: (name: string, field: string) => `${name}, by ${field}`,
  more: (count: number) => `${count} more`,
};

/** Why there is no number, as a sentence: where, what, and what to do. */
export const noNumberWords = {
  notGiven: (field: string) => `${field}: give a number.`,
  damaged: (field: string) => `${field}: what stands there can’t be read. Type it again.`,
  kinds: (field: string, taken: string) =>
    `${field}: ${taken} is not of the kind that belongs there, as a count among lengths is not. Take another number.`,
  tooManyLinks: (field: string, most: number) =>
    `${field}: it takes more than ${most} numbers. Make some of them one sum among the measures, and take that.`,
  absent: (name: string, field: string) =>
    `${name} is not there with what stands at ${field}. Change that, and it is there again.`,
  tooLarge: (name: string) =>
    `${name} comes to more than a kilometre. Check the numbers it is worked out from, and their units.`,
  tooManyMarks: (name: string, most: number) =>
    `${name} has more than ${most} marks. Check the numbers it is worked out from, and their units.`,
  sidesDiffer: (field: string, taken: string) =>
    `${field}: the sides of ${taken} differ. Say which of them is meant.`,
  circle: (path: string) =>
    `Each of these needs the one after it first: ${path}. Type a number at one of them.`,
  undecided: (name: string) => `${name}: decide first how what is made otherwise goes on.`,
  broken: (name: string) =>
    `${name} can’t be worked out: that is a mistake of the app, not yours. What is made of it stays. Other numbers may give an answer.`,
  waits: (where: string, what: string) => `${where} waits for ${what}.`,
  first: (sentence: string) => `First: ${sentence}`,
};

/** Why a number that is taken from elsewhere isn’t there. */
export const goneWords = {
  gone: (where: string) =>
    `${where} takes a number that isn’t in this garment any more. Type it, or take another.`,
  'taken off': (where: string, what: string) =>
    `${where} waits for ${what}, which is taken off. Put it back, or type a number here.`,
  newer: (where: string, what: string) =>
    `${where} waits for ${what}, which this version of the app doesn’t know. Update the app, or type a number here.`,
  'no such side': (where: string, what: string) =>
    `${where} waits for ${what}, which isn’t done for that side any more. Say which side is meant.`,
  awaited: (where: string, what: string) => `${where} waits for ${what}, which is on its way.`,
  missing: (where: string, what: string) =>
    `${where} waits for ${what}, which could not be fetched. Connect once, then open the garment again.`,
  absent: (where: string, what: string, by: string) =>
    `${where} waits for ${what}, which isn’t there with what is chosen at ${by}. Choose otherwise there, or type a number here.`,
};

/** A work nothing of which can be worked out here. */
export const workTroubleWords = {
  newer: (work: string) =>
    `${work}: this version of the app doesn’t know all that is in it. Update the app; it is kept as it is, and what is made of it stays.`,
  awaited: (work: string) => `${work}: its calculation is on its way.`,
  missing: (work: string) =>
    `${work}: its calculation could not be fetched. Connect once, then open the garment again; nothing is lost.`,
};

/** Something of a record that can’t be worked with. */
export const unsoundWords = {
  quantity: (name: string) =>
    `${name}, among the measures, can’t be read here. It is kept as it is; add it again to work with it.`,
  work: (name: string) =>
    `${name}, a work, can’t be read here. It is kept as it is; add it again to work with it.`,
  fact: (name: string) =>
    `${name}: something that was noted as made can’t be read, or is there twice. It is kept as it is; measure again what it was.`,
  begun: (name: string) =>
    `${name}: how the row was begun can’t be read. What is made stays; look over what is to come.`,
  decision: (name: string) =>
    `${name}: what was decided can’t be read. It is kept as it is, and asked again where it is needed.`,
};

/** Made otherwise than asked. */
export const conflictWords = {
  row: (name: string, count: number, whole: boolean) =>
    `${name}: ${count === 1 ? 'one that is made lies' : `${count} that are made lie`} elsewhere than asked now. Decide ${whole ? 'what becomes of that' : 'how the rest goes on'}.`,
  over: (name: string, by: string) =>
    `${name}: as made it is ${by} more than is asked now. Decide what becomes of that.`,
  lacks: (name: string, by: string) =>
    `${name}: as made it lacks ${by} of what is asked now. Decide where that comes from.`,
  other: (name: string) => `${name}: made otherwise than asked now. Decide what becomes of that.`,
  ruleOnly:
    'None of your numbers changed: only a rule of the app did since this was made. What is made stays.',
  ruleChanged: 'A rule of the app changed, too, since this was made.',
};

/** Why something was not done. Each says so first. */
export const refusedWords = {
  works: (most: number) =>
    `Not done: a garment holds ${most} works at the most. Begin another garment for what is further.`,
  facts: (most: number) =>
    `Not done: a garment holds ${most} things made at the most. Begin another garment for what is further.`,
  size: 'Not done: this garment is as large as one can be. Begin another garment for what is further.',
  links: (most: number) =>
    `Not done: a field takes ${most} numbers at the most. Make some of them one sum among the measures, and take that.`,
  row: (most: number) =>
    `Not done: a row has ${most} marks at the most. Make two rows of it, or give fewer.`,
  length:
    'Not done: a length is a kilometre at the most. Look at the number and at its unit, and type it again.',
  outline: (most: number) =>
    `Not done: an outline has ${most} corners at the most. Draw it with fewer.`,
  circle: (path: string) =>
    `Not done: each of these would need the one after it first: ${path}. Take another number, or type one.`,
  stale: 'Not done: the number on the key has changed. Look at it, then press again.',
  waits: (sentence: string) => `Not done. ${sentence}`,
  undecided: 'Not done: a decision is open. Take it first, then press again.',
  'all made': 'Not done: all of it is made already.',
  'id taken': 'Not done: two things were added at once. Press again.',
  'a sum is not measured':
    'Not done: this number is worked out from others. Measure one of those, or type a number in its place.',
  'no tape': 'Not done: no tape is chosen. Choose yours in the settings, then press again.',
  begun:
    'Not done: some of this row is made already. Say how far it is made with Made up to here instead.',
  'made before':
    'Not done: this was made before the app knew, so it has no number. Take that back, then make it where it measures.',
  longNote: (most: number) =>
    `Not kept: a note holds ${most} letters at the most. Shorten it, or put some of it at another step.`,
  manyPhotos: (most: number) =>
    `Not kept: a garment holds ${most} photos at the most. Take one off first.`,
  /** @param made what was made to the numbers of the change that is to be taken back */
  madeTo: (made: readonly string[]) =>
    `Not taken back yet: since then something was made to it: ${made.join(', ')}. Without the change it would be otherwise than asked.`,
  changedSince: (name: string) =>
    `Not taken back: ${name} was changed again since. Change it there.`,
  madeAgain: (name: string) =>
    `Not taken back: ${name} was made again since, and only one of the two can be. Take that one back first.`,
  /** @param more how many beside those named */
  taken: (names: readonly string[], more: number) => {
    const all = more > 0 ? [...names, `${more} more`] : names;
    return all.length === 1
      ? `Not taken off: ${all[0]} takes it. Type a number there, or take another; then take it off.`
      : `Not taken off: ${all.join(', ')} take it. Type numbers there, or take others; then take it off.`;
  },
  hasFacts: (name: string) =>
    `Not taken back: something of ${name} is made. Take it off instead; what is made is kept with it.`,
};

/** Not done, since what it is about isn’t there. */
export const notThereWords = {
  step: 'Not done: that step isn’t there any more. Look at what is next, then press again.',
  mark: 'Not done: that mark isn’t to come any more. Look at what is next, then press again.',
  fact: 'Not done: that was taken back already.',
  work: 'Not done: that isn’t in this garment any more. Another tab may have taken it off.',
  conflict: 'Not done: there is nothing to decide there any more.',
  way: 'Not done: that way isn’t open any more. Look at those there are, and choose again.',
  change: 'Not taken back: it is too long ago, or was taken back already.',
};
