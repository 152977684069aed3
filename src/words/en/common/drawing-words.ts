/** What a drawing with its numbers on it shows, where no page's figure says it. */
export const drawingWords = {
  faced: 'Section through the hem, layers drawn apart; the facing flat beside it',
  hole: 'Buttonhole and button from above, the button from its side',
  strip: 'Strip from its cut end, and the whole of it',
  stripCorner: 'Strip at its first corner, and the whole of it',
  crossing: (moved: boolean) => `The crossing${moved ? ', moved' : ''}, the lower strip level`,
  seam: 'The allowance flat; under it the seam in section, layers drawn apart',
  boundSeam: 'The allowance flat, the seam in section, layers drawn apart, and its strip',
  edgeAndSeams: 'One edge flat; under it what all edges come to',
  clips: 'Clips on a curved seam',
  seams: (count: number) => `${count} ${count === 1 ? 'seam' : 'seams'}`,
  clipCount: (count: number) => `${count} ${count === 1 ? 'clip' : 'clips'}`,
  holes: (count: number) => `${count} ${count === 1 ? 'hole' : 'holes'}`,
  teeth: (count: number) => `${count} teeth`,
  lacing:
    'A few stitches from the front, the layers from their side, all of the lace laid straight',
  pieces: (count: number) => `${count} pieces`,
};
