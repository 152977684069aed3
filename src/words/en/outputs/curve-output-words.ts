/** What curves, slants and cut ends give, and what the hand does for them. */
export const curveOutputWords = {
  line: 'Along the stitch line',
  edge: 'Along the raw edge',
  radius: 'Radius of the raw edge',
  marks: 'Marks along the stitch line',
  mark: 'Walk the tape on its edge along the stitch line, mark',
  walked: 'Walked along the line',
  walkedLine: 'Along the curve itself',
  walkMarks: 'Marks, as walked',
  walk: 'Walk the tape along the line in the same steps, mark',
  slant: 'Along the slanted edge',
  markSlant: 'Mark the length along the slanted edge',
  wanted: 'Both diagonals, once it is square',
  pull: 'Pull the cloth until both diagonals are alike, let it rest',
  skew: 'One edge runs ahead by',
  usable: 'Left square, if that is cut off',
};
