import { cautionWords } from '#words/common/caution-words.ts';
import { seamOutputWords as words } from '#words/outputs/seam-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Comes, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type AllowanceChange, changeAllowance } from '../../sewing/seams/seam-change.ts';
import { type SeamAsked, seamFields } from './fields.ts';
import { GIRTH_FIELDS, girthChange } from './read.ts';

const output = outputOf(seamFields);
const { what } = seamFields.specs;

const change = {
  kind: 'length',
  reads: ['given', 'wanted', 'seams'],
  when: { field: 'what', is: what.is('change') },
} as const;

/** Another allowance than the pattern's, and a garment let out or taken in. */
export const changeOutputs = [
  output({
    key: 'trim-edge',
    name: words.trimEdge,
    ...change,
    step: {
      do: words.cutEdge,
      datum: 'raw-edge',
      stage: 'cut',
      undoable: false,
      bound: 'most',
      caution: cautionWords.blades,
    },
    of: (fields) => more(mapped(changed(fields), ({ eachEdge }) => eachEdge)),
  }),
  output({
    key: 'add-edge',
    name: words.addEdge,
    ...change,
    step: { do: words.addTo, datum: 'raw-edge', stage: 'cut', undoable: true, bound: 'least' },
    of: (fields) => more(mapped(changed(fields), ({ eachEdge }) => exactLength(-eachEdge))),
  }),
  output({
    key: 'girth',
    name: words.girth,
    ...change,
    of: (fields) => mapped(changed(fields), ({ girth }) => girth),
  }),
  output({
    key: 'moved',
    name: words.moved,
    kind: 'length',
    reads: GIRTH_FIELDS,
    when: { field: 'what', is: what.is('girth') },
    of: (fields) => mapped(girthChange(fields), ({ eachEdge }) => eachEdge),
  }),
];

function changed(asked: Pick<SeamAsked, (typeof change.reads)[number]>): Outcome<AllowanceChange> {
  const { given: pattern, wanted, seams } = asked;
  return changeAllowance(needed({ pattern, wanted, seams }));
}

/** Only where it is more than nothing: else nothing is taken off, or added. */
function more(length: Outcome<ExactLength>): Comes<ExactLength> {
  return length.ok && length.value <= 0 ? { ok: false, absent: 'wanted' } : length;
}
