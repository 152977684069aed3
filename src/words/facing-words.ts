/** A hem finished with a facing. */
export const facingWords = {
  title: 'Faced hem',
  labels: {
    depth: 'Depth, finished',
    kind: 'The facing',
    seam: 'Facing seam',
    turn: 'Free edge, turned',
    edgeStitch: 'Stitch in from edge',
    radius: 'Radius of the curve',
    finished: 'Finished length',
    left: 'Cloth below hem line',
  },
  kind: { shaped: 'Cut to the curve', bias: 'Bias strip' },
  after: 'to leave for the seam',
  sentence: (seam: string, turn: string, stitchUp: string) =>
    `Sew the facing on ${seam} from the raw edge, turn it in, press on the seam. Turn its free edge ${turn} under, stitch ${stitchUp} above the hem line.`,
  deep: { shaped: 'Cut the facing deep', bias: 'Cut the bias strip wide' },
  long: { shaped: 'Its edge', bias: 'Its length' },
  longOf: {
    shaped: 'the curve of the hem line, on the same grain',
    bias: 'as the hem line, and a seam at each end',
  },
  gives: 'Free edge has to give',
  givesOf: (percent: string) => `${percent} %: lose on an outward curve, gain on an inward one`,
  givesFormula: (depth: string, radius: string, percent: string) =>
    `${depth} ÷ ${radius} = ${percent} %, half of what a hem turned up would (geometry, derived here).`,
  formula: (seam: string, depth: string, turn: string, deep: string) =>
    `${seam} + ${depth} + ${turn} = ${deep}.`,
  published: (rule: { says: string; source: string }) => `${rule.says} (${rule.source}).`,
};
