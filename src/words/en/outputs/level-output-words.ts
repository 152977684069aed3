/** What a levelled hem gives, and what the hand does for it. */
export const levelOutputWords = {
  hem: 'Finished hem above the floor',
  mark: 'Mark the hem so high above the floor, all round',
  most: 'Most that is trimmed',
  cut: 'Cut the raw edge to its marks; at most so much comes off',
  turn: 'Turned up for the hem',
  turnUp: 'Turn the hem up, press',
  lowest: 'Lowest hem that all places reach',
  uneven: 'From the lowest place of the raw edge to the highest',
};
