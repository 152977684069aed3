import { cautionWords } from '#words/common/caution-words.ts';
import { gathersOutputWords as words } from '#words/outputs/gathers-output-words.ts';
import { all, given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Strips } from '../../sewing/cloth/strips.ts';
import { fullnessOf, gathers } from '../../sewing/fullness/gathers.ts';
import type { Gathers, GathersInput } from '../../sewing/fullness/gathers-input.ts';
import { gatherMarks, partsOfMarks } from '../../sewing/fullness/gathers-marks.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { BY_CLOTH, GATHER_FIELDS, gathersFields } from './fields.ts';
import { type Asked, cutDeepOf, gathersInput, stripsOf } from './gathered.ts';
import { rowOutputs } from './row-outputs.ts';

const output = outputOf(gathersFields);
const { by, cloth, deep } = gathersFields.specs;
const asked = { reads: GATHER_FIELDS, readsIf: BY_CLOTH } as const;
const ofCloth = { reads: GATHER_FIELDS } as const;
const hasCloth = { field: 'cloth', is: given(cloth) } as const;
const hasDeep = { field: 'deep', is: given(deep) } as const;

/** The plan, with what it was made of. */
function planOf(fields: Asked): Outcome<{ input: GathersInput; plan: Gathers }> {
  const input = gathersInput(fields);
  if (!input.ok) return input;
  return mapped(gathers(input.value), (plan) => ({ input: input.value, plan }));
}

function stripsIn(fields: Asked): Outcome<Strips> {
  const found = planOf(fields);
  if (!found.ok) return found;
  return needed({ strips: stripsOf(fields, found.value.plan.strip) }).strips;
}

/** What is left over of the strips: more by as much as less was cut of them. */
function leftOf(fields: Asked, cut?: number): Outcome<ExactLength> {
  const found = planOf(fields);
  if (!found.ok) return found;
  const asked = found.value.plan.cut;
  return mapped(stripsIn(fields), ({ left }) =>
    exactLength(Math.max(0, left + asked - (cut ?? asked))),
  );
}

const strip = output({
  ...asked,
  key: 'strip',
  name: words.strip,
  kind: 'length',
  adds: true,
  step: {
    do: words.cut,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields) => mapped(planOf(fields), ({ plan }) => plan.cut),
});

const cutDeep = output({
  key: 'cut-deep',
  name: words.cutDeep,
  kind: 'length',
  reads: ['deep', 'top', 'hem'],
  when: hasDeep,
  step: {
    do: words.cutStrips,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields) => cutDeepOf(fields),
});

/** Marks as asked or as many as were begun, on a strip as it was cut. */
function marksOf(fields: Asked, count: number | undefined, cut?: number) {
  return mapped(planOf(fields), ({ input, plan }) => {
    const parts = count === undefined ? input.parts : partsOfMarks(input, count);
    const long = cut === undefined ? plan.strip : exactLength(cut - 2 * input.ends);
    return gatherMarks({ ...input, parts }, { strip: long, edge: input.edge });
  });
}

const decides = ['parts', 'ring', 'flat'] as const;

/** How wide the cloth is that its strips are cut across. */
const clothWide = output({
  key: 'cloth-wide',
  name: words.clothWide,
  kind: 'length',
  bound: 'most',
  reads: ['cloth'],
  when: hasCloth,
  of: (fields) => {
    const { cloth } = needed({ cloth: fields.cloth });
    return answerUnless(mustBePositive('cloth', cloth), () => ({ ok: true, value: cloth }));
  },
});

/** What gathers give: the strip, marks on it and its edge, its rows, and the cloth. */
export const gathersOutputs: Outputs = {
  id: 'gathers',
  rule: 1,
  fields: gathersFields,
  outputs: [
    cutDeep,
    strip,
    output({
      ...asked,
      key: 'marks',
      name: words.marks,
      kind: 'run',
      decides,
      bentBy: [strip],
      step: {
        do: words.mark,
        datum: 'cut-end',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields, { count, made }) =>
        mapped(marksOf(fields, count, made[strip.key]), (marks) => marks.strip),
    }),
    output({
      ...asked,
      key: 'edge-marks',
      name: words.edgeMarks,
      kind: 'run',
      decides,
      step: { do: words.markEdge, datum: 'strip-begins', stage: 'join', undoable: true },
      of: (fields, { count }) => mapped(marksOf(fields, count), (marks) => marks.edge),
    }),
    ...rowOutputs,
    output({
      ...asked,
      key: 'edge',
      name: words.edge,
      kind: 'length',
      step: {
        do: words.draw,
        datum: 'zero',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields) => mapped(planOf(fields), ({ input }) => input.edge),
    }),
    output({
      ...asked,
      key: 'ratio',
      name: words.ratio,
      kind: 'number',
      bentBy: [strip],
      of: (fields, { made }) =>
        mapped(planOf(fields), ({ input, plan }) => {
          const cut = made[strip.key];
          return cut === undefined ? plan.ratio : fullnessOf(input, cut);
        }),
    }),
    output({
      ...ofCloth,
      key: 'strips',
      name: words.strips,
      kind: 'count',
      when: hasCloth,
      of: (fields) => mapped(stripsIn(fields), ({ count }) => count),
    }),
    output({
      ...ofCloth,
      key: 'joins',
      name: words.joins,
      kind: 'count',
      when: hasCloth,
      of: (fields) => mapped(stripsIn(fields), ({ joins }) => joins),
    }),
    output({
      ...ofCloth,
      key: 'left',
      name: words.left,
      kind: 'length',
      bound: 'most',
      when: hasCloth,
      bentBy: [strip],
      of: (fields, { made }) => leftOf(fields, made[strip.key]),
    }),
    clothWide,
    output({
      ...ofCloth,
      key: 'cloth',
      name: words.cloth,
      kind: 'length',
      bound: 'least',
      when: { field: 'deep', is: all(given(cloth), given(deep)) },
      adds: true,
      material: { kind: 'cloth', across: clothWide, always: true, unless: by.is('strip') },
      of: (fields) => mapped(stripsIn(fields), ({ cloth }) => needed({ cloth }).cloth),
    }),
  ],
};
