/** What the lacing of a row, or of two, gives, and what the hand does for it. */
export const lacingOutputWords = {
  holes: ['Holes, from the first', 'Holes of row 2, from the first'],
  lace: ['Lace to cut', 'Lace to cut for row 2'],
  pieces: ['Pieces of lace', 'Pieces of lace for row 2'],
  piece: ['Each piece, without splices', 'Each piece for row 2, without splices'],
  toFirst: ['From the middle to hole 1, with its tail', 'Row 2: middle to hole 1, with its tail'],
  toLast: [
    'From the middle to the last hole, with its tail',
    'Row 2: middle to the last hole, with its tail',
  ],
  all: 'Lace in all',
  cut: ['Cut the lace', 'Cut the lace for row 2'],
  blade:
    'Cut away from the hand that holds the lace, never towards it. Where you work with others, local rules and qualified practice come first.',
} as const;
