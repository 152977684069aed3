/** What two matched edges give, and what the hand does for it. */
export const matchOutputWords = {
  marks: 'Marks, edge that keeps its length',
  otherMarks: 'Marks, edge that is eased on',
  mark: 'Mark the edge that keeps its length',
  markOther: 'Mark the edge it meets',
  left: 'Notches left over, on the edge with more of them',
  sewPast: 'Sew past a notch that meets none',
  sewn: (i: number) => `Sewn to notch ${i}, from the beginning`,
  sew: (i: number) => `Sew until notch ${i} meets`,
  ease: 'Ease in all',
  easeOf: (i: number) => `Ease in length ${i}`,
  unpaired: 'Ease in all, lengths that don’t pair',
  percent: 'Ease in all, per cent',
  fullest: 'Fullest part, per cent',
  move: (i: number) => `Notch ${i} moves towards the end by`,
};
