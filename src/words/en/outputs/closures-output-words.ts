/** What a row of closures gives, and what the hand does for it. */
export const closuresOutputWords = {
  marks: 'Places of the closures',
  count: 'How many',
  space: 'Widest space',
  otherSide: 'Set back, other side',
  sew: 'Sew on, at its middle',
};
