interface Rule {
  says: string;
  source: string;
}

const labels = {
  depth: 'Depth, finished',
  style: 'Turned',
  turn: 'First turn',
  edgeStitch: 'Stitch in from fold',
  thickness: 'Cloth thick',
  finished: 'Finished length',
  shape: 'The hem line',
  chord: 'Across the curve',
  rise: 'Rise of the curve',
  round: 'Round the hem line',
  above: 'Round, a depth above',
  cloth: 'The cloth eases in',
  ease: 'Eases in, per cent',
  corner: 'Vent or corner',
  side: 'Depth at the side',
  angle: 'Angle of the corner',
  taper: 'Sleeve or leg',
  atHem: 'Across at the hem line',
  acrossAbove: 'Across, a depth above',
};

/** A hem: what is turned up, pressed and stitched. */
export const hemWords = {
  title: 'Hem',
  labels,
  style: {
    single: 'Once',
    double: 'Twice, equally',
    unequal: 'Twice, first less',
    narrow: 'Narrow, twice',
  },
  shape: {
    straight: 'Straight',
    rise: 'Curve, by its rise',
    readings: 'Curve, two readings',
    inward: 'Curve, inward',
  },
  cloth: {
    firm: 'Firmly woven, 3 %',
    medium: 'Medium, 6 %',
    soft: 'Soft wool, 10 %',
    own: 'My own figure',
  },
  corner: { none: 'None', mitre: 'Mitred' },
  taper: { none: 'Straight', taper: 'Tapered' },
  notGiven: 'not given',
  after: 'to turn up',
  press: 'Line',
  sentence: (first: string | undefined, hemLine: string, stitchUp: string) =>
    `${first === undefined ? 'Press' : `Press ${first} from the raw edge, then`} ${hemLine} from the raw edge. Stitch ${stitchUp} above the fold.`,
  tryOn: 'Try on before you cut: a sleeve, leg or skirt cut short stays short.',
  iron: (celsius: number) =>
    `Pressing: follow the care label, lower figure first (one dot at most ${celsius} °C); test on a scrap, touch the iron by its handle only.`,
  folds: 'Taken by the folds, in it',
  chalk: 'Chalk lines to fold to',
  chalkOf: (first: string | undefined, second: string) =>
    first === undefined ? second : `${first} from the raw edge, then ${second} from the fold`,
  cut: 'Cut length',
  usual: 'Usual depths',
  classLabel: 'By its depth',
  hemClass: {
    rolled: 'a rolled hem',
    narrow: 'a narrow hem',
    ordinary: 'an ordinary hem',
    deep: 'a deep hem',
  },
  notNarrow: (narrow: string) =>
    `This is no narrow hem any more: that is up to ${narrow} deep. Make it less, or turn it otherwise.`,
  narrowAsUsual: (depth: string) => `Make it ${depth}, and ${depth} turned in`,
  radius: 'Radius of the curve',
  fullness: 'Inner fold has to lose',
  stretch: 'Inner fold has to gain',
  fullnessOf: (percent: string, excess: string | undefined) =>
    excess === undefined ? `${percent} %` : `${percent} %, ${excess} in all`,
  deepest: 'Deepest that lies flat',
  tooFull: (percent: string, takes: string, deepest: string) =>
    `This will not lie flat: ${percent} % to lose, the cloth takes about ${takes} %. Make it ${deepest} deep or less, or face the hem, with a bias strip where the curve is tight.`,
  inward: (percent: string) =>
    `An inward curve is too short when turned up: stretch the edge by ${percent} %, or clip it, or face it.`,
  shallower: (depth: string) => `Make it ${depth} deep`,
  corner1: 'Mark 1, along the bottom from the raw corner',
  corner2: 'Mark 2, up the side from the raw corner',
  cornerHow: (trim: string) =>
    `Fold mark 1 on mark 2, stitch from them to the finished corner, trim ${trim} outside. With double turns, measure after the first turns are pressed.`,
  cornerFlat: 'Corner, flat, wrong side up',
  section: 'Section through the hem',
  sectionDepth: (depth: string) => `depth ${depth}`,
  sectionTurn: (turn: string) => `turn ${turn}`,
  widths: 'Cut the allowance across',
  widthsOf: (depth: string, raw: string) => `${depth} at the inner fold, ${raw} at the raw edge`,
  formula: (depth: string, turn: string, folds: string, allowance: string) =>
    `${depth} + ${turn}${folds} = ${allowance}.`,
  foldsTerm: (count: number, taken: string) => ` + ${count} folds, ${taken}`,
  curveFormula: (depth: string, radius: string, percent: string) =>
    `2 × ${depth} ÷ ${radius} = ${percent} % (geometry, derived here; what a cloth takes is common practice, no source).`,
  source: (rule: Rule) => `Sum and chalk lines: ${rule.source}.`,
};
