import { cautionWords } from '#words/common/caution-words.ts';
import { biasOutputWords as words } from '#words/outputs/bias-output-words.ts';
import { not } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { alongSelvedge } from '../../sewing/cloth/bias.ts';
import { mustBePositive, mustNotBeNegative } from '../../sewing/length-checks.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import { ALL_FIELDS, biasFields, isHave, isRound, isSingle, isStrips } from './fields.ts';
import { linesRun } from './run.ts';
import { biasOf, longBy } from './worked.ts';

const output = outputOf(biasFields);

const forStrips = { when: { field: 'from', is: isStrips } } as const;
const joined = { when: { field: 'from', is: not(isSingle) } } as const;
const cuts = {
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: cautionWords.shears,
} as const;

const clothWide = output({
  key: 'cloth-wide',
  name: words.clothWide,
  kind: 'length',
  bound: 'most',
  reads: ALL_FIELDS,
  of: (fields) => mapped(biasOf(fields), ({ wide }) => wide),
});

const seam = output({
  key: 'seam',
  name: words.seam,
  kind: 'length',
  reads: ['seam'],
  ...joined,
  step: { do: words.join, datum: 'raw-edge', stage: 'join', undoable: true },
  of: (fields) => {
    const { seam: sewn } = needed({ seam: fields.seam });
    return answerUnless(mustNotBeNegative('seam', sewn), () => ({ ok: true, value: sewn }));
  },
});

/** What bias strips give: the cloth, its lines, the strip, and how long it is when it is joined. */
export const biasOutputs: Outputs = {
  id: 'bias',
  rule: 1,
  fields: biasFields,
  outputs: [
    clothWide,
    output({
      key: 'cloth',
      name: words.cloth,
      kind: 'length',
      reads: ALL_FIELDS,
      when: { field: 'want', is: not(isHave) },
      adds: true,
      material: { kind: 'cloth', across: clothWide },
      step: { do: words.cutCloth, datum: 'cut-end', ...cuts },
      of: (fields) => mapped(biasOf(fields), ({ piece }) => piece),
    }),
    output({
      key: 'apart',
      name: words.apart,
      kind: 'length',
      reads: ['width'],
      of: ({ width }) =>
        answerUnless(mustBePositive('width', width), () => ({
          ok: true,
          value: alongSelvedge(width),
        })),
    }),
    output({
      key: 'lines',
      name: words.lines,
      kind: 'run',
      reads: ALL_FIELDS,
      ...forStrips,
      decides: ['width', 'need', 'cloth', 'long', 'shortest', 'seam'],
      step: { do: words.mark, datum: 'raw-corner', stage: 'cut', undoable: true },
      of: (fields) =>
        mapped(biasOf(fields), ({ strips, piece, wide }) =>
          linesRun(needed({ strips }).strips, piece, wide),
        ),
    }),
    output({
      key: 'strips',
      name: words.strips,
      kind: 'count',
      reads: ALL_FIELDS,
      ...forStrips,
      of: (fields) => mapped(biasOf(fields), ({ strips }) => needed({ strips }).strips.strips),
    }),
    output({
      key: 'rounds',
      name: words.rounds,
      kind: 'count',
      reads: ALL_FIELDS,
      when: { field: 'from', is: isRound },
      of: (fields) => mapped(biasOf(fields), ({ round }) => needed({ round }).round.rounds),
    }),
    output({
      key: 'joins',
      name: words.joins,
      kind: 'count',
      reads: ALL_FIELDS,
      ...joined,
      of: (fields) => mapped(biasOf(fields), ({ joins }) => joins),
    }),
    output({
      key: 'strip',
      name: words.strip,
      kind: 'length',
      reads: ['width'],
      step: { do: words.cut, datum: 'done', ...cuts },
      of: ({ width }) =>
        answerUnless(mustBePositive('width', width), () => ({ ok: true, value: width })),
    }),
    seam,
    output({
      key: 'long',
      name: words.long,
      kind: 'length',
      bound: 'least',
      reads: ALL_FIELDS,
      bentBy: [seam],
      of: (fields, { made }) =>
        mapped(biasOf(fields), (worked) => {
          const sewn = made[seam.key];
          return sewn === undefined ? worked.long : longBy(fields, worked, sewn);
        }),
    }),
  ],
};
