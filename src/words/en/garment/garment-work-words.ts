import { howMuchMade } from '../common/how-much-made.ts';

/** A work of a garment, opened in place. */
export const garmentWorkWords = {
  actions: 'Actions',
  answer: 'What it gives',
  made: (made: number, of: number, before: number) => {
    const known = before > 0 ? `, ${of === 1 ? '' : `${before} of them `}before the app knew` : '';
    return howMuchMade(made, of) + known;
  },
  sides: 'Which side',
  noNumber: '–',
  isMade: (name: string) => `${name}, made`,
  lastMade: (name: string) => `${name}: the last, made`,
  headBefore: (name: string) => `${name}, made before the app knew`,
  stepAt: (what: string, where: string) => (where === '' ? what : `${what}, ${where}`),
  notToScale: (name: string) => `${name}; not to scale`,
  given: (field: string, text: string) => `${field}, ${text}: change it`,
  found: (name: string, text: string) => `${name}, ${text}: name it`,
  asMade: (name: string, text: string) => `${name}, ${text}, made: plan and measure`,
  asBefore: (name: string, text: string) =>
    `${name}, ${text}, made before the app knew: what is known of it`,
  isBefore: 'made before the app knew',
  beforeLead: (text: string) =>
    `Made before the app knew. Its number was never taken: the plan stands in for it, ${text}.`,
  notBefore: 'It isn’t made yet',
  from: (name: string) => `from ${name}`,
  link: (name: string, number: string) => `${name} ${number}`,
  waiting: 'waits',
  marks: (count: number) => `${count} ${count === 1 ? 'mark' : 'marks'}`,
  rowMade: 'Made',
  /** @param other undefined where there is no answer at that end */
  atEnd: (name: string, now: number, other: number | undefined, reading: string, more: boolean) =>
    `${name}: ${now} as read; ${other ?? 'no answer'} if ${reading} is at the ${more ? 'upper' : 'lower'} end of its ±.`,
  otherReadings: 'what was measured elsewhere',
  rowBefore: 'Made before the app knew',
  rowToCome: 'To come',
  andMore: (count: number) => `and ${count} more`,
  done: 'Done',
  more: 'More',
  less: 'Less',
  follow: 'Follow',
  undo: 'Undo',
  decide: 'Decide',
  fields: 'Fields',
  source: 'Where its number comes from',
  typed: 'Typed',
  fromGarment: 'From the garment',
  read: 'Read it',
  onlyHere: (side: string) => `Only ${side}`,
  asOthers: 'As the other sides',
  nothingFits: 'Nothing in this garment fits here yet. Type the number, or name one first.',
  plusMinus: (text: string, off: string) => `${text} ± ${off}`,
  total: 'all together',
  inAll: (number: string) => `${number} all together`,
  back: 'Back',
  whenSettled: 'When this settles',
  changed: (before: string, after: string) => `${before} → ${after}`,
  changedAloud: (name: string, before: string, after: string) =>
    `${name}: ${before}, then ${after}`,
  madeAndAsked: (made: string, asked: string) => `made ${made}, asked ${asked}`,
  conflicts: (count: number) =>
    count === 1 ? 'One that is made would differ' : `${count} that are made would differ`,
  gives: 'It gives',
  nameIt: 'Name it',
  name: 'Its name',
  nameLead: (name: string) =>
    `${name} gets a name of its own among the measures, and follows this work.`,
  nameMissing: 'Name: give it one.',
  keep: 'Keep',
  nameAndOften: 'Name it, or do it several times',
  often: 'How often it is done',
  leftRight: ['left', 'right'],
  oftenAs: (sides: readonly string[]) => {
    if (sides.length === 0) return 'Once';
    return sides.every((side, i) => side === String(i + 1))
      ? `${sides.length} times`
      : sides.join(' and ');
  },
  /** How many pieces come of it: what is cut each time, times how often. */
  oftenMakes: (pieces: string, each: number, all: number) =>
    `${pieces}: ${each} each time, ${all} in all.`,
  oftenFixed:
    'Something of it is made: how often it is done stays. For more of it add another work.',
  planned: (text: string) => `planned ${text}`,
  shown: (text: string) => `shown ${text}`,
  measured: (text: string) => `measured ${text}`,
  measure: 'Measure it',
  takeBack: 'Take it back',
  takeOff: 'Take off this work',
  takeOffAsk: (name: string) => `Take ${name} off the garment?`,
  takeOffLead: 'What is made of it is kept with it, and it can be put back.',
  hangs: 'These take a number of it:',
  wait: 'They wait',
  waitMore: 'Each waits until the work is back, or another number is given.',
  put: 'Today’s numbers in its place',
  putMore: 'Each keeps the number it has now.',
  off: 'Take it off',
  goneWork: 'This work isn’t in the garment any more.',
};
