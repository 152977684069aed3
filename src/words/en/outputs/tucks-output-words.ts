/** What tucks give, and what the hand does for them. */
export const tucksOutputWords = {
  cut: 'Cloth to cut across',
  cutIt: 'Cut the cloth, to shape only after tucking',
  marks: 'Stitch lines and folds',
  mark: 'Mark the line across the cloth',
  depth: 'Depth of the first tuck',
  stitch: 'Fold, press, stitch so far from the fold',
  finished: 'Finished width as it comes out',
  press: 'Press to one side, measure across',
  count: 'Tucks',
  spacing: 'From stitch line to stitch line',
  gap: 'Clear between tucks',
  between: 'From group to group',
  taken: 'In all tucks',
  gain: 'Letting one out gains',
};
