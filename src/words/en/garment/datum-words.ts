/** Where the tape’s zero is held for a step, where that is no place of a run. */
const STEPS = {
  'stitch-line': 'from the stitch line',
  'first-row': 'from the first row',
  fold: 'from the fold',
  'centre-line': 'from the centre line',
  'buttons-zero': 'from the zero of the buttons',
  'both-begin': 'from where both edges begin',
  /** Nothing is measured. */
  done: '',
};

export const stepDatumWords = (datum: keyof typeof STEPS) => STEPS[datum];

export const isStepDatum = (datum: string): datum is keyof typeof STEPS =>
  Object.hasOwn(STEPS, datum);
