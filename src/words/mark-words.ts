import type { MarkKind } from '../sewing/run.ts';

const KINDS: Readonly<Record<MarkKind, string>> = {
  measure: '',
  closure: '',
  level: 'on the level',
  sewn: 'sewn',
  press: 'press',
  stitch: 'stitch',
  mitre: 'mitre',
  hole: '',
  corner: 'corner',
  centre: 'centre',
};

export const markWords = {
  list: 'Marks',
  kind: (kind: MarkKind) => KINDS[kind],
  across: (length: string) => `${length} in from the first row’s edge`,
  acrossShort: (length: string) => `${length} across`,
  made: (planned: string) => `made here, planned ${planned}`,
  step: 'from the one before',
  uneven: (length: string) =>
    `Marked on your tape, no space is off by more than ${length}. Each mark is taken from the same end, so nothing adds up.`,
  even: 'Every mark falls on a line of your tape.',
};

export const answerWords = {
  none: '—',
};

export const tapeWords = {
  tape: (name: string, marks: number, length: string) =>
    marks === 1 ? `${name}: ${length} on the tape` : `${name}: ${marks} marks along ${length}`,
  moves: 'Tape: left and right move along it, plus and minus zoom',
};

/** Where an answer's marks may go. */
export const offerWords = {
  glass: 'On the glass, true size',
  paper: 'On paper, or a file',
};
