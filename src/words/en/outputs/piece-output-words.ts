/** What a piece gives, and what the hand does for it. */
export const pieceOutputWords = {
  cutWidth: 'Width to cut',
  cutLength: 'Length to cut',
  givesWidth: 'Finished width it gives',
  givesWidthAll: 'Finished width of all of these',
  givesLength: 'Finished length it gives',
  lacksWidth: 'Lacks in width',
  lacksLength: 'Lacks in length',
  across: 'Widest, as cut and opened',
  along: 'Longest, as cut',
  cornerBottom: 'Raw corner, along the bottom',
  cornerSide: 'Raw corner, along the side',
  count: 'Pieces',
  cutWide: 'Cut the piece to its width',
  cutLong: 'Cut the piece to its length',
};
