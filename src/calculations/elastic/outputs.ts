import { elasticWords } from '#words/calculations/elastic-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { elasticOutputWords as words } from '#words/outputs/elastic-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { type Elastic, elastic, ofRing } from '../../sewing/fullness/elastic.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { casingOutputs } from './casing-outputs.ts';
import { type ElasticAsked, elasticFields, elasticInput, LENGTH_FIELDS } from './fields.ts';
import { marksOf, partsProblems, type Worked } from './worked.ts';

const output = outputOf(elasticFields);
const { by, pass, round, sampleMost } = elasticFields.specs;

type Fields = Pick<ElasticAsked, (typeof LENGTH_FIELDS)[number]>;

/** The elastic as planned, or of the length it was cut. */
function standing(fields: Fields, cut: number | undefined): Outcome<Omit<Elastic, 'cut'>> {
  const input = elasticInput(fields);
  return mapped(elastic(input), (plan) =>
    cut === undefined || cut <= input.lap ? plan : ofRing(input, exactLength(cut - input.lap)),
  );
}

/** The marks as asked, or as many as were begun. */
function marked(
  fields: Fields & Pick<ElasticAsked, 'parts'>,
  count: number | undefined,
  cut?: number,
): Outcome<Worked['marks']> {
  const parts = count ?? fields.parts;
  const found = standing(fields, cut);
  if (!found.ok) return found;
  return answerUnless(partsProblems(parts), () => ({
    ok: true,
    value: marksOf(elasticInput(fields), found.value.ring, parts),
  }));
}

const cut = output({
  key: 'cut',
  name: words.cut,
  kind: 'length',
  reads: LENGTH_FIELDS,
  adds: true,
  material: { kind: 'tape' },
  step: {
    do: words.cutElastic,
    datum: 'cut-end',
    stage: 'close',
    undoable: false,
    bound: 'least',
    caution: elasticWords.tryOn,
  },
  of: (fields) => mapped(elastic(elasticInput(fields)), (plan) => plan.cut),
});

const markedFields = [...LENGTH_FIELDS, 'parts'] as const;
const passes = { field: 'pass', is: given(pass) } as const;
const percent = (part: number | undefined): Comes<number> =>
  part === undefined || part <= 0 ? { ok: false, absent: 'pass' } : { ok: true, value: 100 * part };

/** What an elastic in its casing gives: the casing, the elastic, and how far it stretches. */
export const elasticOutputs: Outputs = {
  id: 'elastic',
  rule: 1,
  fields: elasticFields,
  outputs: [
    ...casingOutputs,
    cut,
    output({
      key: 'marks',
      name: words.marks,
      kind: 'run',
      reads: markedFields,
      decides: ['parts'],
      bentBy: [cut],
      step: { do: words.mark, datum: 'cut-end', stage: 'close', undoable: true },
      of: (fields, { count, made }) =>
        mapped(marked(fields, count, made[cut.key]), (marks) => marks.elastic),
    }),
    output({
      key: 'edge-marks',
      name: words.edgeMarks,
      kind: 'run',
      reads: markedFields,
      decides: ['parts'],
      when: { field: 'round', is: given(round) },
      step: {
        do: words.markEdge,
        datum: 'elastic-meets',
        stage: 'turn-up',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields, { count }) => mapped(marked(fields, count), (marks) => marks.edge),
    }),
    output({
      key: 'ring',
      name: words.ring,
      kind: 'length',
      reads: LENGTH_FIELDS,
      bentBy: [cut],
      step: { do: words.joinEnds, datum: 'cut-end', stage: 'close', undoable: true },
      of: (fields, { made }) => mapped(standing(fields, made[cut.key]), ({ ring }) => ring),
    }),
    output({
      key: 'worn',
      name: words.worn,
      kind: 'number',
      reads: LENGTH_FIELDS,
      bentBy: [cut],
      of: (fields, { made }) => mapped(standing(fields, made[cut.key]), ({ worn }) => 100 * worn),
    }),
    output({
      key: 'passing',
      name: words.passing,
      kind: 'number',
      reads: LENGTH_FIELDS,
      when: passes,
      bentBy: [cut],
      of: (fields, { made }) => {
        const found = standing(fields, made[cut.key]);
        return found.ok ? percent(found.value.passing) : found;
      },
    }),
    output({
      key: 'least',
      name: words.least,
      kind: 'length',
      bound: 'least',
      reads: LENGTH_FIELDS,
      when: [
        passes,
        { field: 'by', is: by.is('sample') },
        { field: 'sampleMost', is: given(sampleMost) },
      ],
      of: (fields) => mapped(elastic(elasticInput(fields)), ({ least, ring }) => least ?? ring),
    }),
    output({
      key: 'fullness',
      name: words.fullness,
      kind: 'number',
      reads: LENGTH_FIELDS,
      when: { field: 'round', is: given(round) },
      of: (fields) => mapped(elastic(elasticInput(fields)), ({ fullness = 1 }) => fullness),
    }),
  ],
};
