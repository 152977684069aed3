import type {
  BodyMeasureId,
  MeasureGroup,
  NamedBy,
  TakenOver,
} from '../../../sewing/sources/body-measures.ts';
import { peopleQuotes } from '../published/published-people-words.ts';
import { girthMeasures, type MeasureSaid } from './body-girth-words.ts';
import { lengthMeasures } from './body-length-words.ts';

const measures: Readonly<Record<BodyMeasureId, MeasureSaid>> = {
  ...girthMeasures,
  ...lengthMeasures,
};

const groups: Readonly<Record<MeasureGroup, string>> = {
  girths: 'Girths: round the body',
  lengths: 'Lengths: along the body',
  widths: 'Widths: across the body',
};

const how: Readonly<Record<MeasureGroup, string>> = {
  girths: 'The tape lies close all round and isn’t pulled tight.',
  lengths: 'The tape follows the body; to the floor it hangs straight.',
  widths: 'The tape lies flat, not pulled tight.',
};

const over: Readonly<Record<TakenOver, string>> = {
  skin: 'On the skin.',
  'worn-beneath': 'Over what is worn beneath the garment, and nothing else.',
  bra: 'Over the bra or stays that will be worn.',
  'no-shoes': 'Without shoes.',
  hair: 'Over flat hair, as it will be worn.',
};

const named: Readonly<Record<NamedBy, string>> = {
  'iso-1989': 'named as in ISO 8559:1989',
  'iso-2017': 'named as in ISO 8559-1:2017',
  'en-13402': 'named as in EN 13402-1',
  memory: 'named as in the standards, from memory',
  survey: 'named as in a survey; in no standard we read',
};

const { says, source } = peopleQuotes['grown-ups'];
const ends = { least: 'At least', most: 'At most' } as const;

/** The measures of a wearer. */
export const bodyMeasureWords = {
  measures,
  groups,
  how,
  over,
  named,
  takenAsRead: 'where it is taken, too',
  takenFromMemory: 'where it is taken is common practice, from memory',
  from: (name: string, taken: string) => `It is ${name}; ${taken}.`,
  choose: 'Which measure of the body',
  list: 'Measures of the body',
  there: (name: string) => `${name} ✓`,
  others: 'Others',
  take: 'Add it',
  takeBoth: 'Add left and right',
  isIt: 'It is this one',
  drawing: (where: string) => `Drawing: ${where}`,
  sides: { left: 'left', right: 'right' },
  side: (name: string, side: string) => `${name}, ${side}`,

  right: 'It is right',
  /** A quiet question about a measure that few have. */
  odd: (past: 'least' | 'most', end: string, beside: string | undefined) =>
    beside === undefined
      ? `${ends[past]} ${end} is usual of grown-ups: is this right?`
      : `${ends[past]} ${end} is usual beside this ${beside}: is one of them mistaken?`,
  noMeasure: 'No measure of a body is nothing, or less: is this right?',
  oddSource: (alike: boolean) =>
    `${says} (${source}${alike ? '; taken a little otherwise there' : ''}). A child’s may be. It is worked with all the same.`,
};
