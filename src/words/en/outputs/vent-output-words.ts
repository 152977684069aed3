/** What a vent gives, and what the hand does for it. */
export const ventOutputWords = {
  needs: 'Round that is needed at the hip',
  ease: 'Ease at the hip',
  lacks: 'Lacking at the hip',
  begins: 'Vent begins, from the top edge',
  vent: 'Vent, at least',
  mark: 'Mark where the vent begins',
};
