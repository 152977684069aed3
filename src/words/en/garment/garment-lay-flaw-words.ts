/** Flaws of a cloth, which no piece is laid on. */
export const layFlawWords = {
  flaw: (long: string, wide: string, along: string, across: string) =>
    `Flaw ${long} long, ${wide} wide: ${along} from the cut end, ${across} from the left selvedge`,
  takeOut: 'press to take it out',
  add: 'Add a flaw',
  addHint:
    'a hole, a stain or a slub: no piece is laid on it. Measured on the washed cloth, laid open as it will be cut',
  most: (most: string) =>
    `${most} flaws are the most that can be kept: one that reaches round several does as well.`,
  asked: {
    along: 'From the cut end to the flaw',
    long: 'How long it is along the cloth',
    across: 'From the left selvedge to the flaw',
    wide: 'How wide it is across the cloth',
  },
  next: 'Next',
  keep: 'Keep it',
  offCloth: 'It lies beyond the other selvedge: measure from the left one.',
  refused:
    'Measure it with the tape: from 0 to where it begins, more than 0 for its size, 100 m at most.',
};
