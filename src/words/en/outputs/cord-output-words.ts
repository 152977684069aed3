/** What a drawstring gives, and what the hand does for it. */
export const cordOutputWords = {
  allowance: 'Casing, above the fold',
  cutAllowance: 'Cut the edge so far above the casing’s fold',
  turn: 'First turn of the casing',
  press: 'Press the first turn, then the casing on its fold',
  header: 'Stitch line of the header',
  sewHeader: 'Stitch the header',
  stitch: 'Stitch line of the casing',
  sew: 'Stitch the casing, its openings made before',
  clear: 'Casing flat, clear',
  cut: 'Cord to cut',
  cutCord: 'Thread it, draw the channel to its widest, cut the cord, stitch it fast at the middle',
  free: 'Free at each end, at its widest',
};
