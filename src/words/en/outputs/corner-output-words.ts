/** What a mitred corner gives, and what the hand does for it. */
export const cornerOutputWords = {
  foldBottom: 'Fold of the side, on the bottom edge',
  foldSide: 'Fold of the bottom, on the side edge',
  mitreBottom: 'Mitre mark A, along the bottom',
  mitreSide: 'Mitre mark B, up the side',
  trim: 'Trim outside the stitching',
  pressBottom: 'Press the side hem',
  pressSide: 'Press the bottom hem',
  markBottom: 'Mark A on the bottom edge',
  markSide: 'Mark B on the side edge',
  cut: 'Trim outside the mitre’s stitching',
};
