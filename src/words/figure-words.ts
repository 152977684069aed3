/** The key of the line styles, the same on every drawing. */
export const figureWords = {
  cloth: 'cloth',
  fold: 'fold',
  stitch: 'stitch line',
  behind: 'lies behind',
  cut: 'cut line',
  measure: 'measure',
  hole: 'hole, made',
  clash: 'clash',
  move: 'move this way',
};
