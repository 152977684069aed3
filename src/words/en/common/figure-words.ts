/** The key of the line styles, the same on every drawing. */
export const figureWords = {
  cloth: 'cloth',
  fold: 'fold',
  placement: 'placement line',
  stitch: 'stitch line',
  behind: 'lies behind',
  cut: 'cut line',
  measure: 'measure',
  hole: 'hole, made',
  clash: 'clash',
  move: 'move this way',
  /** Under a drawing that doesn't follow what was made. */
  planned: (name: string) => `${name}; as planned, not as made`,
};
