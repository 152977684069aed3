/** What a counted row of holes gives, and what the hand does for it. */
export const centreOutputWords = {
  holes: 'Holes, from the first',
  count: 'Holes counted',
  middle: 'Middle, by holes from the first',
  mark: 'Mark the middle',
  toMiddle: 'First hole to the middle',
  span: 'First to last hole',
};
