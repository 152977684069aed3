/** What bias strips give, and what the hand does for it. */
export const biasOutputWords = {
  clothWide: 'How wide that cloth is',
  cloth: 'Cloth for the strips',
  cutCloth: 'Cut off the cloth for the strips',
  apart: 'Lines apart, along the edge',
  lines: 'Lines of the strips',
  mark: 'Mark the line equally far from the corner on both edges',
  strips: 'Strips',
  rounds: 'Rounds',
  joins: 'Joins',
  strip: 'Strip cut wide',
  cut: 'Cut the strip along its lines',
  seam: 'Join, each edge',
  join: 'Sew the joins, stitch lines meeting',
  long: 'Strip, joined',
};
