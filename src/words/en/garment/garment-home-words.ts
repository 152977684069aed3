import { howMuchMade } from '../common/how-much-made.ts';
import { lastHomeWords } from './last-home-words.ts';

/** The garment in hand, and its key. */
export const garmentHomeWords = {
  garments: (name: string) => `${name}: all garments`,
  made: howMuchMade,
  works: 'Work',
  done: (works: number) => (works === 1 ? '1 work done' : `${works} works done`),
  undone: 'Show what is done',
  waits: 'waits for a number',
  differs: 'made otherwise than asked',
  noted: 'something is noted',
  passedOver: 'passed over',
  takeUp: (step: string) => `Take it up again: ${step}`,
  sides: (sides: readonly string[]) =>
    sides.length < 2 ? (sides[0] ?? '') : `${sides.slice(0, -1).join(', ')} and ${sides.at(-1)}`,
  ordered: 'Steps and their order',
  row: (made: number, of: number) => `${made} of ${of}`,
  open: (work: string) => `Open ${work}`,

  key: lastHomeWords.key,
  step: (work: string, does: string, place: string) =>
    place === '' ? `${work}: ${lower(does)}` : `${work}: ${lower(does)}, ${place}`,
  mark: (rank: number, of: number) => `${rank} of ${of}`,
  from: (length: string) => `${length} from the one before`,
  /** How many are cut with one step, where that is more than one of each side. */
  pieces: (count: number) => `${count} pieces`,
  after: (number: string) => `then ${number}`,
  make: 'Made',
  check: 'Check',
  more: 'More about this step',
  justMade: (number: string) => `made ${number}`,
  justBefore: 'made before the app knew',
  justMeasured: (number: string) => `measured ${number}`,
  justTaken: 'a made mark was taken back',
  backOne: 'back one',
  keeping: 'being kept…',

  checks: 'This can’t be undone. Check it first:',
  hangs: 'It hangs on these numbers, which may still change:',
  final: 'These numbers are final',
  beforeCut: (step: string, open: number) =>
    `Before the next cut (${step}): ${open === 1 ? '1 number' : `${open} numbers`} to decide`,
  waitsFor: 'no number yet',
  isBefore: 'as planned, made before',

  decide: (work: string) => `Made otherwise than asked: ${work}. How does it go on?`,
  decideKey: 'See the ways',
  missingKey: 'Give it',
  typeKey: 'Type it',
  readKey: 'Read it',
  allMade: 'All is made.',
  allMadeKey: 'All garments',
  nothing: 'Nothing is on this garment yet.',
  nothingKey: 'Add work',

  elsewhere: 'Made elsewhere',
  otherwise: 'Made otherwise',
  passOver: 'Pass over',
  before: 'Made before the app knew',
  together: (sides: string) => `Made together: ${sides}`,
  singly: 'Each side by itself',
  note: 'Note or photo',
  upTo: 'Made up to here',
  upToWhich: 'The last one that is made:',
  speak: 'Speak',
  work: 'Open the work',
  close: 'Close',

  bar: 'Garment',
  add: 'Add',
  measures: 'Measures',
  convert: 'in ↔ cm',
  convertName: 'in ↔ cm: inches and centimetres',
  tape: 'Tape',
  sheet: 'Sheet',
  sheetName: 'Sheet: the garment on paper',
  reading: 'The garment is being read…',
};

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
