import { cautionWords } from '#words/common/caution-words.ts';
import { openingOutputWords as words } from '#words/outputs/opening-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Comes, type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { mapped, refused } from '../../sewing/problem.ts';
import { opensTo, passOver } from '../../sewing/wearer/pass-over.ts';
import { type OpeningAsked, openingFields } from './fields.ts';

const output = outputOf(openingFields);
const { way, slit: typed } = openingFields.specs;

const PASS_FIELDS = ['edge', 'body', 'ease', 'below', 'down'] as const;
const FIELDS = [...PASS_FIELDS, 'slit'] as const;
type Asked = Pick<OpeningAsked, (typeof FIELDS)[number]>;

/** What is opened: as it is typed, else as little as passes; nothing where the edge passes closed. */
function planned(fields: Asked): Comes<ExactLength> {
  const found = passOver(fields);
  if (fields.slit !== undefined) {
    const [first] = mustBePositive('slit', fields.slit);
    if (first) return refused(first);
    return found.ok ? { ok: true, value: fields.slit } : found;
  }
  if (!found.ok) return found;
  return found.value.least > 0
    ? { ok: true, value: found.value.least }
    : { ok: false, absent: 'edge' };
}

const open = output({
  key: 'open',
  name: words.open,
  kind: 'length',
  reads: FIELDS,
  when: { field: 'way', is: way.is('seam') },
  step: { do: words.mark, datum: 'stitch-line', stage: 'join', undoable: true, bound: 'least' },
  of: planned,
});

const slit = output({
  key: 'slit',
  name: words.slit,
  kind: 'length',
  reads: FIELDS,
  when: { field: 'way', is: way.is('slit') },
  step: {
    do: words.cut,
    datum: 'stitch-line',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.blades,
  },
  of: planned,
});

const bentBy = [open, slit];

/** What an opening gives: what passes, how long it has to be, and how far it opens. */
export const openingOutputs: Outputs = {
  id: 'opening',
  rule: 1,
  fields: openingFields,
  outputs: [
    output({
      key: 'needs',
      name: words.needs,
      kind: 'length',
      bound: 'least',
      reads: PASS_FIELDS,
      of: (fields) => mapped(passOver(fields), ({ needs }) => needs),
    }),
    output({
      key: 'least',
      name: words.least,
      kind: 'length',
      bound: 'least',
      reads: PASS_FIELDS,
      of: (fields) => mapped(passOver(fields), ({ least }) => least),
    }),
    open,
    slit,
    output({
      key: 'opens',
      name: words.opens,
      kind: 'length',
      reads: FIELDS,
      bentBy,
      of: (fields, { made }) => opened(fields, made, (opens) => opens),
    }),
    output({
      key: 'over',
      name: words.over,
      kind: 'length',
      reads: FIELDS,
      bentBy,
      of: (fields, { made }) =>
        opened(fields, made, (opens) => exactLength(opens - fields.body - fields.ease)),
    }),
    output({
      key: 'lacks',
      name: words.lacks,
      kind: 'length',
      bound: 'least',
      reads: FIELDS,
      bentBy,
      when: { field: 'slit', is: given(typed) },
      of: (fields, { made }) => {
        const there = madeOf(made) ?? needed({ slit: fields.slit }).slit;
        return mapped(passOver(fields), ({ least }) => exactLength(least - there));
      },
    }),
  ],
};

function madeOf(made: MadeSteps): ExactLength | undefined {
  return made[open.key] ?? made[slit.key];
}

/** How far it opens, with the opening there is; closed where there is none. */
function opened(
  fields: Asked,
  made: MadeSteps,
  see: (opens: ExactLength) => ExactLength,
): Comes<ExactLength> {
  const plan = planned(fields);
  if (!plan.ok && !('absent' in plan)) return plan;
  const there = madeOf(made) ?? (plan.ok ? plan.value : exactLength(0));
  return { ok: true, value: see(opensTo(fields.edge, there)) };
}
