/** What stripes and checks give, and what the hand does for them. */
export const repeatOutputWords = {
  repeat: 'One repeat',
  cloth: 'Cloth for panels that match',
  extra: 'Cloth that matching costs',
  places: 'Where panels begin',
  cutPanel: 'Find the line again, pin, cut the panel in a single layer',
  start: 'From the line to the second piece',
  cutSecond: 'Lay the second piece so far from the line, pin line on line, cut it single',
  lost: 'Cloth lost',
  inside: 'From the last line to each edge',
  cutEdges:
    'Pin the centre on its line, cut both edges so far past the last lines, and their seams more',
  one: 'Repeat along the one edge',
  other: 'Repeat along the other',
  drift: 'Apart at the end of the seam',
};
