/** What a drawing with its numbers on it shows, where no page's figure says it. */
export const drawingWords = {
  faced: 'Section through the hem, layers drawn apart; the facing flat beside it',
  hole: 'Buttonhole and button from above, the button from its side',
  strip: 'Strip from its cut end, and the whole of it',
  stripCorner: 'Strip at its first corner, and the whole of it',
  crossing: (moved: boolean) => `The crossing${moved ? ', moved' : ''}, the lower strip level`,
  holes: (count: number) => `${count} ${count === 1 ? 'hole' : 'holes'}`,
  teeth: (count: number) => `${count} teeth`,
};
