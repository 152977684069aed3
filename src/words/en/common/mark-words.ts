import type { MarkKind } from '../../../sewing/run.ts';

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
  fold: 'fold line',
  placement: 'placement line',
  notch: 'notch',
};

export const markWords = {
  list: 'Marks',
  kind: (kind: MarkKind) => KINDS[kind],
  across: (length: string) => `${length} in from the first row’s edge`,
  acrossShort: (length: string) => `${length} across`,
  made: (planned: string) => `plan ${planned}`,
  step: 'from the one before',
  off: (mark: string, space: string | undefined) =>
    `Marked on your tape, no mark is off by more than ${mark}${
      space === undefined
        ? '; the spaces are as they should be'
        : `, no space by more than ${space}`
    }. Each mark is taken from the same end, so nothing adds up.`,
  coarse:
    'Your tape is too coarse here: two of these places fall on one line of it. Take a tape with finer divisions.',
  even: 'Every mark falls on a line of your tape.',
};

export const answerWords = {
  none: '—',
};

export const tapeWords = {
  tape: (name: string, marks: number, length: string) =>
    marks === 1 ? `${name}: ${length} on the tape` : `${name}: ${marks} marks along ${length}`,
  hair: 'a hair',
  beside: (mark: string, off: string, over: boolean) =>
    over ? `${mark} and ${off} over` : `${mark} less ${off}`,
  moves: 'Tape: left and right move along it, plus and minus zoom',
};

/** Where an answer's marks may go. */
export const offerWords = {
  glass: 'On the glass, true size',
  paper: 'On paper, or a file',
  meant: (written: string) => `I mean ${written}`,
  leaveOut: (key: string) => `Leave “${key}” out`,
};
