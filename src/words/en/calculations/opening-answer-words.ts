import type { PeopleQuote } from '../../../sewing/sources/people.ts';
import { peopleQuotes } from '../published/published-people-words.ts';

/** What is said of an opening. */
export const openingAnswerWords = {
  atLeast: 'of opening, at least',
  longer: 'of opening is lacking: it doesn’t pass',
  passesClosed: 'it passes closed:',
  toSpare: 'to spare',
  passesOpen: 'it passes:',
  round: 'round when open',
  unneeded: 'No opening is needed, as far as this edge goes.',
  edges: (opens: string) =>
    `Both edges of the opening give way: open, it is ${opens} round. Measure it from the finished edge.`,
  width: (needs: string) =>
    `Open it down to where the garment is ${needs} round by itself: a shorter one jams at its end. Measure it from the finished edge.`,
  lacks: (least: string) => `At least ${least} is needed. Lengthen the opening, or widen the edge.`,
  enough: (least: string) => `At least ${least} is needed.`,
  needsLine: 'What has to pass',
  leastLine: 'Opening, at least',
  opensLine: 'Round when open',
  edgeLine: 'Without an opening, the edge',
  edgeWider: (needs: string, percent: string) =>
    `at least ${needs} round, or it stretches by ${percent} %`,
  doesNotPass: (by: string) => `Closed, the edge is ${by} too narrow to pass.`,
  deep: 'The opening is longer than half of the edge is round: see how deep it reaches on the body.',
  thumb: 'With the thumb tucked in a hand is more round than over the knuckles: measure it so.',
  tryOn:
    'Try it over the head, the hand or the hips with the edge basted before it is cut to its end.',
  stop: 'Cut to 1 mm (1/32 in) short of the end, with small blades; stay it first, so that it can’t tear on.',
  needsFormula: (body: string, ease: string, needs: string) => `${body} + ${ease} = ${needs}.`,
  slitFormula: (needs: string, edge: string, slit: string) => `(${needs} − ${edge}) ÷ 2 = ${slit}.`,
  opensFormula: (edge: string, slit: string, opens: string) => `${edge} + 2 × ${slit} = ${opens}.`,
  widthFormula: (down: string, needs: string, edge: string, below: string, slit: string) =>
    `${down} × (${needs} − ${edge}) ÷ (${below} − ${edge}) = ${slit}.`,
  derived: 'Geometry, derived here: a slit adds twice its length.',
  practice: 'Common practice, no source.',
  says: (quote: PeopleQuote) => `${peopleQuotes[quote].says}.`,
  source: (quote: PeopleQuote) => `${peopleQuotes[quote].source}.`,
};
