import { fitOutputWords as words } from '#words/outputs/fit-output-words.ts';
import { all, either, given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { inEachDart, onEachEdge, piecesGirth, wantedGirth } from '../../sewing/wearer/fit.ts';
import { type FitAsked, fitFields, GIRTH_FIELDS, piecesInput } from './fields.ts';

const output = outputOf(fitFields);
const { pieces, seams, edge, darts, dart } = fitFields.specs;

const ofPieces = { field: 'pieces', is: given(pieces) } as const;
const ofSeams = [ofPieces, { field: 'seams', is: given(seams) }] as const;
const ofDarts = [ofPieces, { field: 'darts', is: given(darts) }] as const;
const changed = either(all(given(seams), given(edge)), all(given(darts), given(dart)));

const LACK_FIELDS = ['body', 'ease', ...GIRTH_FIELDS] as const;
type Asked = Pick<FitAsked, (typeof GIRTH_FIELDS)[number]>;

const girth = output({
  key: 'girth',
  name: words.girth,
  kind: 'length',
  reads: GIRTH_FIELDS,
  when: ofPieces,
  step: { do: words.measure, datum: 'zero', stage: 'join', undoable: true },
  of: (fields) => mapped(piecesGirth(piecesInput(fields)), (found) => found.girth),
});

const bentBy = [girth];

/** What a fit gives: the girth that is wanted, what the pieces give, and what is lacking, shared out. */
export const fitOutputs: Outputs = {
  id: 'fit',
  rule: 1,
  fields: fitFields,
  outputs: [
    output({
      key: 'wanted',
      name: words.wanted,
      kind: 'length',
      reads: ['body', 'ease'],
      of: wantedGirth,
    }),
    output({
      key: 'change',
      name: words.change,
      kind: 'length',
      reads: GIRTH_FIELDS,
      when: [ofPieces, { field: 'edge', is: changed }],
      of: (fields) => mapped(piecesGirth(piecesInput(fields)), ({ change }) => change),
    }),
    girth,
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: ['body', ...GIRTH_FIELDS],
      bentBy,
      when: ofPieces,
      of: ({ body, ...fields }, { made }) => {
        const there = stands(fields, made);
        if (!there.ok) return there;
        return answerUnless(mustBePositive('body', body), () => ({
          ok: true,
          value: exactLength(there.value - body),
        }));
      },
    }),
    output({
      key: 'lacks',
      name: words.lacks,
      kind: 'length',
      bound: 'least',
      reads: LACK_FIELDS,
      bentBy,
      when: ofPieces,
      of: (fields, { made }) => lacking(fields, made),
    }),
    output({
      key: 'each-edge',
      name: words.eachEdge,
      kind: 'length',
      bound: 'least',
      reads: LACK_FIELDS,
      bentBy,
      when: ofSeams,
      of: (fields, { made }) =>
        shared(lacking(fields, made), (lacks) =>
          onEachEdge(lacks, needed({ seams: fields.seams }).seams),
        ),
    }),
    output({
      key: 'each-dart',
      name: words.eachDart,
      kind: 'length',
      bound: 'least',
      reads: LACK_FIELDS,
      bentBy,
      when: ofDarts,
      of: (fields, { made }) =>
        shared(lacking(fields, made), (lacks) =>
          inEachDart(lacks, needed({ darts: fields.darts }).darts),
        ),
    }),
  ],
};

/** The girth as it measures where that was taken, else as planned. */
function stands(fields: Asked, made: MadeSteps): Outcome<ExactLength> {
  return mapped(piecesGirth(piecesInput(fields)), (found) => made[girth.key] ?? found.girth);
}

function lacking(
  { body, ease, ...fields }: Pick<FitAsked, (typeof LACK_FIELDS)[number]>,
  made: MadeSteps,
): Outcome<ExactLength> {
  const there = stands(fields, made);
  if (!there.ok) return there;
  return mapped(wantedGirth({ body, ease }), (wanted) => exactLength(wanted - there.value));
}

function shared(
  lacks: Outcome<ExactLength>,
  out: (lacks: ExactLength) => Outcome<ExactLength>,
): Outcome<ExactLength> {
  return lacks.ok ? out(lacks.value) : lacks;
}
