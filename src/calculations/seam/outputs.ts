import { seamOutputWords as words } from '#words/outputs/seam-output-words.ts';
import { either, not } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { changeAllowance } from '../../sewing/seams/seam-change.ts';
import { finishSeam } from '../../sewing/seams/seam-finish.ts';
import { changeOutputs } from './change-outputs.ts';
import { clipOutputs } from './clip-outputs.ts';
import { type SeamAsked, seamFields } from './fields.ts';
import { firstRow, rowOutputs, secondRow, spareOutput } from './finish-outputs.ts';
import { finishInput, GIRTH_FIELDS, girthChange } from './read.ts';

const output = outputOf(seamFields);
const { what, finish } = seamFields.specs;

const SEWN_FIELDS = ['what', 'given', 'wanted', ...GIRTH_FIELDS] as const;
type Asked = Pick<SeamAsked, (typeof SEWN_FIELDS)[number]>;

/** One line of stitches on each seam, where it isn't sewn twice. */
const stitchLine = output({
  key: 'stitch-line',
  name: words.stitchLine,
  kind: 'length',
  reads: SEWN_FIELDS,
  when: { field: 'finish', is: either(not(what.is('finish')), not(finish.is('french'))) },
  step: { do: words.sew, datum: 'raw-edge', stage: 'join', undoable: true },
  of: (fields) => sewn(fields),
});

/** What a seam gives: what it takes on each edge, its rows, another allowance, its clips. */
export const seamOutputs: Outputs = {
  id: 'seam',
  rule: 1,
  fields: seamFields,
  outputs: [
    ...changeOutputs,
    spareOutput,
    stitchLine,
    firstRow,
    secondRow,
    output({
      key: 'sewn',
      name: words.sewn,
      kind: 'length',
      edge: true,
      reads: SEWN_FIELDS,
      bentBy: [stitchLine, firstRow, secondRow],
      of: (fields, { made }) => mapped(sewn(fields), (planned) => asSewn(planned, fields, made)),
    }),
    ...rowOutputs(stitchLine),
    ...clipOutputs,
  ],
};

/** From the raw edge to the stitch line, on each edge. */
function sewn(asked: Asked): Outcome<ExactLength> {
  switch (asked.what) {
    case 'finish': {
      const { given } = needed({ given: asked.given });
      return mapped(finishSeam(finishInput(given, asked)), ({ consumed }) => consumed);
    }
    case 'change': {
      const { pattern, wanted, seams } = needed({
        pattern: asked.given,
        wanted: asked.wanted,
        seams: asked.seams,
      });
      return mapped(changeAllowance({ pattern, wanted, seams }), () => wanted);
    }
    case 'girth':
      return mapped(girthChange(asked), ({ left }) => left);
    case 'curve': {
      const { allowance } = needed({ allowance: asked.allowance });
      return answerUnless(mustBePositive('allowance', allowance), () => ({
        ok: true,
        value: allowance,
      }));
    }
  }
}

/** Both rows of a French seam together, or its one line, as they were sewn. */
function asSewn(planned: ExactLength, { first, second }: Asked, made: MadeSteps): ExactLength {
  const [row, other] = [made['first-row'], made['second-row']];
  if (row === undefined && other === undefined) return made['stitch-line'] ?? planned;
  const rows = needed({ first, second });
  return exactLength((row ?? rows.first) + (other ?? rows.second));
}
