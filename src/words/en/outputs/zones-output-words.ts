/** What gathers in zones give, and what the hand does for them. */
export const zonesOutputWords = {
  strip: 'Strip to cut',
  cut: 'Cut the strip, or its strips and join them',
  marks: 'Marks on the strip',
  mark: 'Mark the strip where zones meet and between',
  edgeMarks: 'Marks on the edge',
  markEdge: 'Mark the edge where zones meet and between',
  edge: 'Edge in all',
  draw: 'Pin mark to mark, draw up what is gathered, measure, stitch',
};
