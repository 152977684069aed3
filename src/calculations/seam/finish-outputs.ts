import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { seamOutputWords as words } from '#words/outputs/seam-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Comes, type Output, outputOf, type StepDatum } from '../../calculation/output.ts';
import { type ExactLength, exactLength, length } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { type FinishPlan, finishSeam } from '../../sewing/seams/seam-finish.ts';
import type { Finish, Row } from '../../sewing/seams/seam-rows.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { type SeamAsked, seamFields } from './fields.ts';
import { finishInput, ROW_FIELDS, type RowsAsked } from './read.ts';

const output = outputOf(seamFields);
const { what, finish, laid, edge } = seamFields.specs;

const finishing = { field: 'what', is: what.is('finish') } as const;
const FINISH_FIELDS = ['given', ...ROW_FIELDS] as const;
type Asked = Pick<SeamAsked, 'given'> & RowsAsked;

const row = (...finishes: readonly Finish[]) => ({
  kind: 'length' as const,
  reads: FINISH_FIELDS,
  when: [finishing, { field: 'finish' as const, is: finish.is(...finishes) }],
});
const sew = { stage: 'join', undoable: true } as const;
const cut = (datum: StepDatum) =>
  ({ datum, stage: 'join', undoable: false, caution: cautionWords.blades }) as const;

const TOP_ROWS = [
  { key: 'topstitch', field: 'top', name: words.topRow, sew: words.topstitch },
  {
    key: 'topstitch-second',
    field: 'topSecond',
    name: words.topSecond,
    sew: words.topstitchSecond,
  },
] as const;

/** As long as the edge that is bound. */
const stripLong = output({
  key: 'strip-long',
  name: words.stripLong,
  kind: 'length',
  bound: 'least',
  reads: ['edge'],
  when: [...row('bound').when, { field: 'edge', is: given(edge) }],
  adds: true,
  of: ({ edge: along = length(0) }) =>
    answerUnless(mustBePositive('edge', along), () => ({ ok: true, value: along })),
});

/** What the finish doesn't need of the pattern's allowance. */
export const spareOutput = output({
  key: 'spare',
  name: words.spare,
  kind: 'length',
  reads: FINISH_FIELDS,
  when: finishing,
  step: { do: words.trimSpare, ...cut('raw-edge'), stage: 'cut', bound: 'most' },
  of: (fields) => there(plan(fields), ({ spare }) => (spare > 0 ? spare : undefined)),
});

export const firstRow = output({
  key: 'first-row',
  name: words.firstRow,
  ...row('french'),
  step: { do: words.sewFirst, datum: 'raw-edge', ...sew },
  of: (fields) => there(plan(fields), beside('sew-first')),
});

export const secondRow = output({
  key: 'second-row',
  name: words.secondRow,
  ...row('french'),
  step: { do: words.sewSecond, datum: 'fold', ...sew },
  of: (fields) => there(plan(fields), at('turn')),
});

/** @param stitchLine as it is sewn, the rows lie in what is left beside it */
export function rowOutputs(stitchLine: Output): Output[] {
  const fold = output({
    key: 'fold',
    name: words.fold,
    ...row('felled', 'mock-french'),
    bentBy: [stitchLine],
    step: {
      do: words.press,
      datum: 'stitch-line',
      ...sew,
      caution: turnedWords.iron(IRON_ONE_DOT.value),
    },
    of: (fields, { made }) =>
      there(plan(fields, made[stitchLine.key]), at('turn-under', 'press-half')),
  });
  return [
    output({
      key: 'upper',
      name: words.upper,
      edge: true,
      ...row('felled'),
      bentBy: [stitchLine],
      of: (fields, { made }) => sides(fields, made[stitchLine.key], ({ upper }) => upper),
    }),
    output({
      key: 'lower',
      name: words.lower,
      edge: true,
      ...row('felled'),
      bentBy: [stitchLine],
      of: (fields, { made }) => sides(fields, made[stitchLine.key], ({ lower }) => lower),
    }),
    output({
      key: 'trim-first',
      name: words.trimFirst,
      ...row('french'),
      step: { do: words.trim, ...cut('first-row') },
      of: (fields) => there(plan(fields), beside('trim-first')),
    }),
    output({
      key: 'trim-under',
      name: words.trimUnder,
      ...row('felled'),
      when: [...row('felled').when, { field: 'laid', is: laid.is('even') }],
      step: { do: words.cutUnder, ...cut('stitch-line') },
      of: (fields) => there(plan(fields), at('trim-under')),
    }),
    fold,
    output({
      key: 'fold-stitch',
      name: words.foldStitch,
      ...row('felled', 'mock-french'),
      bentBy: [stitchLine, fold],
      step: { do: words.sewFold, datum: 'stitch-line', ...sew },
      of: (fields, { made }) => {
        const planned = plan(fields, made[stitchLine.key]);
        return there(planned, (rows) => made[fold.key] ?? at('fell-stitch', 'edge-stitch')(rows));
      },
    }),
    stripLong,
    output({
      key: 'strip',
      name: words.strip,
      ...row('bound'),
      material: { kind: 'bias', edge: true, along: stripLong },
      step: { do: words.cutStrip, ...cut('cut-end'), stage: 'cut', bound: 'least' },
      of: (fields) => there(plan(fields), ({ strip }) => strip),
    }),
    output({
      key: 'bind',
      name: words.bind,
      ...row('bound'),
      step: { do: words.sewStrip, datum: 'raw-edge', ...sew },
      of: (fields) => there(plan(fields), beside('bind')),
    }),
    ...TOP_ROWS.map(({ key, field, name, sew: what }) =>
      output({
        key,
        name,
        ...row('plain'),
        when: [...row('plain').when, { field, is: given(seamFields.specs[field]) }],
        step: { do: what, datum: 'stitch-line', ...sew },
        of: (fields) => there(plan(fields), () => fields[field]),
      }),
    ),
    output({
      key: 'trim-outer',
      name: words.trimOuter,
      ...row('graded'),
      step: { do: words.cutOuter, ...cut('stitch-line') },
      of: (fields) => there(plan(fields), at('trim')),
    }),
    output({
      key: 'trim-inner',
      name: words.trimInner,
      ...row('graded'),
      step: { do: words.cutInner, ...cut('stitch-line') },
      of: (fields) => there(plan(fields), at('trim-inner')),
    }),
  ];
}

/**
 * From the stitch line to the raw edge each layer is cut with: they differ where the under layer is
 * cut narrower, and then lie as far apart however deep the seam is sewn.
 */
function sides(
  fields: Asked,
  sewn: ExactLength | undefined,
  which: (sides: { upper: ExactLength; lower: ExactLength }) => ExactLength,
): Comes<ExactLength> {
  return mapped(plan(fields), ({ consumed, rows }) => {
    const upper = sewn ?? consumed;
    const inset = rows.find((row) => row.do === 'lay-in')?.beside ?? 0;
    return which({ upper, lower: exactLength(upper - inset) });
  });
}

/** The finish on its allowance, or on what was left beside its line as it is sewn. */
function plan({ given: asked, ...rows }: Asked, sewn?: ExactLength): Outcome<FinishPlan> {
  const { given } = needed({ given: asked });
  return finishSeam(finishInput(sewn === undefined ? given : length(Math.round(sewn)), rows));
}

const at =
  (...of: readonly Row['do'][]) =>
  ({ rows }: FinishPlan) =>
    rows.find((row) => of.includes(row.do))?.at;

const beside =
  (of: Row['do']) =>
  ({ rows }: FinishPlan) =>
    rows.find((row) => row.do === of)?.beside;

/** One of its numbers; an allowance that is narrow enough as it is has nothing to trim. */
function there(
  plan: Outcome<FinishPlan>,
  which: (plan: FinishPlan) => ExactLength | undefined,
): Comes<ExactLength> {
  if (!plan.ok) return plan;
  const value = which(plan.value);
  return value === undefined ? { ok: false, absent: 'given' } : { ok: true, value };
}
