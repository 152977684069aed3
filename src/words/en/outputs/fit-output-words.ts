/** What a fit gives, and what the hand does for it. */
export const fitOutputWords = {
  wanted: 'Finished girth, wanted',
  change: 'Change by seams and darts',
  girth: 'Finished girth of the pieces',
  ease: 'Ease there is',
  lacks: 'Lacking all round',
  eachEdge: 'Lacking, on each edge of its seams',
  eachDart: 'Lacking, in each dart',
  measure: 'Measure all round, as sewn',
};
