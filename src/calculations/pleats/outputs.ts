import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { pleatsOutputWords as words } from '#words/outputs/pleats-output-words.ts';
import { all, given, not } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf, runTaken } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { type Strips, stripsFor } from '../../sewing/cloth/strips.ts';
import { type PleatKind, pleatedWidth } from '../../sewing/fullness/pleat-input.ts';
import { LINES } from '../../sewing/fullness/pleat-marks.ts';
import { cameOut } from '../../sewing/fullness/pleats.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { PLEAT_FIELDS, type PleatsAsked, pleatFields, pleatsInput } from './fields.ts';
import { levelOutputs } from './level-outputs.ts';
import { plannedPleats } from './pleated.ts';

const output = outputOf(pleatFields);
const { by, cloth, deep } = pleatFields.specs;

const isThere = by.is('strip');
/** A strip that is there isn't cut any more. */
const toCut = { field: 'by', is: not(isThere) } as const;

const strip = output({
  key: 'strip',
  name: words.strip,
  kind: 'length',
  reads: PLEAT_FIELDS,
  when: toCut,
  step: {
    do: words.cut,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields) => mapped(plannedPleats(fields), ({ plan }) => plan.cut),
});

const marks = output({
  key: 'marks',
  name: words.marks,
  kind: 'run',
  reads: PLEAT_FIELDS,
  decides: ['by', 'there', 'width', 'count', 'kind'],
  step: { do: words.mark, datum: 'cut-end', stage: 'cut', undoable: true },
  // As asked, or of as many pleats as were begun.
  of: (fields, { count }) =>
    mapped(
      plannedPleats(fields, count && Math.round(count / LINES[fields.kind])),
      ({ plan }) => plan.run,
    ),
});

const pleatsIn = (run: Run, kind: PleatKind) => run.marks.length / LINES[kind];

/** The strips that the cloth takes, where its width is given. */
function strips(fields: Pick<PleatsAsked, (typeof STRIP_FIELDS)[number]>): Outcome<Strips> {
  const found = plannedPleats(fields);
  if (!found.ok) return found;
  const { seam, deep } = fields;
  return stripsFor({
    needed: found.value.plan.strip,
    seam,
    deep,
    ...needed({ cloth: fields.cloth }),
  });
}

const STRIP_FIELDS = [...PLEAT_FIELDS, 'cloth', 'deep'] as const;

/** How wide the cloth is that its strips are cut across. */
const clothWide = output({
  key: 'cloth-wide',
  name: words.clothWide,
  kind: 'length',
  bound: 'most',
  reads: ['cloth'],
  when: [toCut, { field: 'cloth', is: given(cloth) }],
  of: (fields) => {
    const { cloth } = needed({ cloth: fields.cloth });
    return answerUnless(mustBePositive('cloth', cloth), () => ({ ok: true, value: cloth }));
  },
});

/** What pleats give: the strip, its lines, and what comes of them. */
export const pleatsOutputs: Outputs = {
  id: 'pleats',
  rule: 1,
  fields: pleatFields,
  outputs: [
    strip,
    marks,
    ...levelOutputs(marks),
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: ['kind'],
      takes: [marks],
      adds: true,
      of: ({ kind }, { takes }) => ({ ok: true, value: pleatsIn(runTaken(takes, marks), kind) }),
    }),
    output({
      key: 'width',
      name: words.width,
      kind: 'length',
      reads: PLEAT_FIELDS,
      takes: [marks],
      of: (fields, { takes }) => {
        const count = pleatsIn(runTaken(takes, marks), fields.kind);
        return mapped(pleatsInput(fields, count), (input) =>
          exactLength(pleatedWidth(input) / count),
        );
      },
    }),
    output({
      key: 'depth',
      name: words.depth,
      kind: 'length',
      reads: ['depth'],
      of: ({ depth }) =>
        answerUnless(mustBePositive('depth', depth), () => ({ ok: true, value: depth })),
    }),
    output({
      key: 'finished',
      name: words.finished,
      kind: 'length',
      reads: PLEAT_FIELDS,
      bentBy: [strip],
      step: {
        do: words.fold,
        datum: 'zero',
        stage: 'cut',
        undoable: true,
        caution: turned.iron(IRON_ONE_DOT.value),
      },
      of: (fields, { made }) => {
        const found = plannedPleats(fields);
        if (!found.ok) return found;
        const { input } = found.value;
        const cut = made[strip.key];
        return cut === undefined ? { ok: true, value: input.finished } : cameOut(cut, input);
      },
    }),
    output({
      key: 'strips',
      name: words.strips,
      kind: 'count',
      reads: STRIP_FIELDS,
      when: [toCut, { field: 'cloth', is: given(cloth) }],
      of: (fields) => mapped(strips(fields), ({ count }) => count),
    }),
    clothWide,
    output({
      key: 'cloth',
      name: words.cloth,
      kind: 'length',
      bound: 'least',
      reads: STRIP_FIELDS,
      when: [toCut, { field: 'deep', is: all(given(cloth), given(deep)) }],
      adds: true,
      material: { kind: 'cloth', across: clothWide, always: true, unless: isThere },
      of: (fields) => mapped(strips(fields), ({ cloth }) => needed({ cloth }).cloth),
    }),
  ],
};
