/** What is said of a hem that is turned up and of one that is faced. */
export const turnedWords = {
  notGiven: 'not given',
  section: 'Section through the hem, layers drawn apart',
  sectionDepth: (depth: string) => `depth ${depth}`,
  sectionTurn: (turn: string) => `turn ${turn}`,
  cut: 'Cut length',
  tryOn: 'Try on before you cut: a sleeve, leg or skirt cut short stays short.',
  iron: (celsius: number) =>
    `Pressing: follow the care label, lower figure first (one dot at most ${celsius} °C); test on a scrap, touch the iron by its handle only.`,
  line: 'Line',
  otherEnd: 'Other end takes',
  otherEndHint: 'its hem or seam',
  cutOf: (length: string, bothEnds: boolean) =>
    bothEnds ? length : `${length}, nothing added at the other end`,
  thick: 'Cloth’s thickness, in it',
  thickOf: (length: string, less: boolean) => `${length} ${less ? 'less' : 'more'}`,
  /** Adds lengths up; one that is less than nothing is taken off. */
  sum: (terms: readonly string[], total: string) =>
    `${terms.reduce((sum, term) =>
      term.startsWith('−') ? `${sum} − ${term.slice(1)}` : `${sum} + ${term}`,
    )} = ${total}.`,
  foldAlone: (quarter: string, thick: string, share: string) =>
    `${quarter} × ${thick} − 2 × ${thick} = ${share}.`,
  foldOver: (quarter: string, thick: string, share: string) =>
    `${quarter} × (${thick} + ${thick}) − (${thick} + 2 × ${thick}) = ${share}.`,
  halfOf: (share: string, half: string) => `${share} ÷ 2 = ${half}.`,
  foldSource: 'Geometry, derived here: measures go to the outside of the fold.',
  stitch: (up: string, edge: string) => `Stitch ${up} above the ${edge}.`,
  stitchByEye: (inner: string) =>
    `Stitch by eye just inside the ${inner}: your tape has no line there.`,
};
