import { lastHomeWords } from './last-home-words.ts';

/** The garment in hand, and its key. */
export const garmentHomeWords = {
  garments: (name: string) => `${name}: all garments`,
  made: (made: number, of: number) => `${made} of ${of} made`,
  works: 'Work',
  done: (works: number) => (works === 1 ? '1 work done' : `${works} works done`),
  undone: 'Show what is done',
  waits: 'waits for a number',
  differs: 'made otherwise than asked',
  row: (made: number, of: number) => `${made} of ${of}`,
  open: (work: string) => `Open ${work}`,

  key: lastHomeWords.key,
  step: (work: string, does: string, place: string) =>
    place === '' ? `${work}: ${lower(does)}` : `${work}: ${lower(does)}, ${place}`,
  mark: (rank: number, of: number) => `${rank} of ${of}`,
  from: (length: string) => `${length} from the one before`,
  after: (number: string) => `then ${number}`,
  make: 'Made',
  check: 'Check',
  more: 'More about this step',
  justMade: (number: string) => `made ${number}`,
  backOne: 'back one',
  keeping: 'being kept…',

  checks: 'This can’t be undone. Check it first:',
  hangs: 'It hangs on these numbers, which may still change:',
  final: 'These numbers are final',

  decide: (work: string) => `Made otherwise than asked: ${work}. How does it go on?`,
  decideKey: 'See the ways',
  missingKey: 'Give it',
  allMade: 'All is made.',
  allMadeKey: 'All garments',
  nothing: 'Nothing is on this garment yet.',
  nothingKey: 'Add work',

  otherwise: 'Made elsewhere',
  passOver: 'Pass over',
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
  reading: 'The garment is being read…',
};

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
