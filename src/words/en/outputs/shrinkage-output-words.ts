/** What shrinkage gives, and what the hand does for it. */
export const shrinkageOutputWords = {
  marks: { along: 'Marks apart, along the grain', across: 'Marks apart, across' },
  mark: {
    along: 'Sew in marks so far apart, along the grain',
    across: 'Sew in marks so far apart, across',
  },
  washed: {
    along: 'Marks apart after washing, along',
    across: 'Marks apart after washing, across',
  },
  wash: {
    along: 'Wash, dry and press it as the garment will be, then measure along the grain',
    across: 'Measure the washed sample across',
  },
  share: { along: 'Lost along the grain, %', across: 'Lost across, %' },
  area: 'Lost of the area, %',
  cut: { along: 'Cut long', across: 'Cut wide' },
  cutIt: { along: 'Cut to length', across: 'Cut to width' },
  after: { along: 'What is there, long afterwards', across: 'What is there, wide afterwards' },
  differs: 'Interfacing loses more than the cloth',
};
