/** What pleats give, and what the hand does for it. */
export const pleatsOutputWords = {
  strip: 'Strip to cut',
  cut: 'Cut the strip',
  marks: 'Fold and placement lines',
  mark: 'Mark the line across the strip',
  levelDepth: {
    lower: 'Depth of a fold, lower down',
    edge: 'Depth of a fold, lower edge',
  },
  levelMarks: { lower: 'Lines, lower down', edge: 'Lines, lower edge' },
  levelMark: {
    lower: 'Mark the line at the level lower down',
    edge: 'Mark the line at the lower edge',
  },
  count: 'Pleats',
  width: 'Width of one',
  depth: 'Depth of a fold',
  finished: 'Finished width as it comes out',
  fold: 'Fold and pin, measure across, then press',
  strips: 'Strips across the cloth',
  clothWide: 'How wide that cloth is',
  cloth: 'Cloth for the strips',
};
