/** What a drawing with its numbers on it shows, where no page's figure says it. */
export const drawingWords = {
  faced: 'Section through the hem, layers drawn apart; the facing flat beside it',
  hole: 'Buttonhole and button from above, the button from its side',
};
