/** What holes round an outline give, and what the hand does for them. */
export const outlineOutputWords = {
  margin: 'From the edge to the line of holes',
  scribe: 'Scribe the margin line on all sides',
  count: 'Holes',
  pitch: 'Hole to hole, first side',
  second: 'Hole to hole, second side',
  holes: 'Holes round the outline',
  punch: 'Punch the hole',
  one: 'Holes on the one edge',
  other: 'Holes on the other edge',
  punchOne: 'Punch the hole in the one edge',
  punchOther: 'Compare with the one, then punch the hole in the other edge',
  longer: 'How much longer the one edge is, per cent',
};
