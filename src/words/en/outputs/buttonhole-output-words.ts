/** What a buttonhole gives, and what the hand does for it. */
export const buttonholeOutputWords = {
  row: 'Where each buttonhole lies, or begins',
  markRow: 'Mark the buttonholes',
  count: 'Buttonholes',
  long: 'Length of the buttonhole',
  pastCentre: 'Start, past the centre line',
  insideCentre: 'End, inside the centre line',
  aboveButton: 'Top, above the button’s place',
  belowButton: 'Bottom, below the button’s place',
  overlapLeast: 'Cloth past the centre line, least rule',
  overlapMost: 'Cloth past the centre line, by every rule',
  markPast: 'Mark the start, toward the edge',
  markInside: 'Mark the end, the other way',
  markAbove: 'Mark the top',
  markBelow: 'Mark the bottom',
  cut: 'Cut the buttonhole open',
};
