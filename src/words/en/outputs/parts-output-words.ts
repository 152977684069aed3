/** What a divided edge gives, and what the hand does for it. */
export const partsOutputWords = {
  marks: 'Marks on the edge',
  otherMarks: 'Marks on the edge it meets',
  part: 'Each part',
  otherPart: 'Each part of the edge it meets',
  ease: 'To ease in on the edge it meets, each part',
  mark: 'Mark the edge',
  markOther: 'Mark the edge it meets',
};
