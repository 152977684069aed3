/** What a faced hem gives, and what the hand does for it. */
export const facingOutputWords = {
  facingDeep: 'Facing, cut deep or wide',
  facingLong: 'Facing, cut long',
  seam: 'Facing seam',
  freeEdge: 'Free edge, turned under',
  stitch: 'Stitching, on the flat cloth',
  stitchUp: 'Stitching, above the hem line',
  allowance: 'Left for the facing seam',
  depth: 'Depth, finished',
  gives: 'Free edge has to give, per cent',
  cut: 'Cut the facing',
  sewOn: 'Sew the facing on',
  press: 'Turn the free edge under',
  sew: 'Stitch the free edge down',
};
