/** What an opening gives, and what the hand does for it. */
export const openingOutputWords = {
  needs: 'Round that has to pass',
  least: 'Opening, at least',
  open: 'Opening left in the seam',
  slit: 'Slit in the piece',
  opens: 'Round, when open',
  over: 'Round to spare, when open',
  lacks: 'Opening, lacking',
  mark: 'Mark where the opening ends',
  cut: 'Cut the slit',
};
