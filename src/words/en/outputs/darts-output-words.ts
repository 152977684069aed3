/** What seams and darts take, and what the hand does for it. */
export const dartsOutputWords = {
  intake: 'Taken in all',
  each: {
    sides: 'Each side seam edge',
    frontDarts: 'Each front dart',
    backDarts: 'Each back dart',
  },
  do: {
    sides: 'Mark each side seam in by so much',
    frontDarts: 'Mark each front dart so wide',
    backDarts: 'Mark each back dart so wide',
  },
  levels: 'Levels, down from the smaller girth',
  markLevel: 'Mark the level on every piece, square to the grain',
  left: 'Left over of what is taken',
};
