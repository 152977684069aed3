/** What two crossing strips give, and what the hand does for it. */
export const crossingOutputWords = {
  shift: 'Upper strip moved, away from its hole 1',
  move: 'Move the upper strip',
  holes: 'New holes through the lower strip',
  punch: 'Punch through the lower strip',
  count: 'How many new holes',
};
