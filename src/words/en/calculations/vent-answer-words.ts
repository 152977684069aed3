/** What is said of a vent. */
export const ventAnswerWords = {
  atLeast: 'of vent, at least',
  lacking: 'lacking at the hip',
  noVent: 'of ease at the hip: no vent is needed',
  begins: (begins: string) =>
    `It begins ${begins} from the top edge at the lowest: from there down the garment is too narrow closed.`,
  above:
    'Let it out, or begin the vent above the hip: give garment and body at the top edge to see where.',
  letOut: 'No vent begins where it is wide enough. Let it out, or open it to the top.',
  wide: 'The garment is wide enough all the way down.',
  beginsLine: 'It begins, from the top edge',
  needsLine: 'Needed at the hip',
  easeLine: 'Ease at the hip',
  lessThanBody: (by: string) => `${by} less than the body`,
  lacksLine: 'Against what is needed',
  lacks: (by: string) => `${by} is lacking`,
  over: (by: string) => `${by} is over`,
  stepLine: 'For a step, at the hem',
  step: (by: string) => `${by} wider than the garment`,
  tooSmall: (by: string) => `At the hip it is ${by} smaller than the body.`,
  lacksWarning: (by: string) => `At the hip ${by} is lacking: the vent stands open there.`,
  rounder:
    'Between top edge and hip the body may be fuller than a straight line: measure it where the vent begins, too.',
  edgesRule: 'So short a way to so much more: the vent is as long as its edges have to give way.',
  tryOn: 'Try it on, walking, sitting and on a step, before the seam is sewn to its end.',
  needsFormula: (hip: string, ease: string, needs: string) => `${hip} + ${ease} = ${needs}.`,
  ventFormula: (long: string, begins: string, vent: string) => `${long} − ${begins} = ${vent}.`,
  derived:
    'Geometry, derived here: between hip and hem garment and need go straight, and a step is taken as the safe side of what it needs.',
  practice: 'Common practice, no source.',
};
