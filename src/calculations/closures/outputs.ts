import { closuresOutputWords as words } from '#words/outputs/closures-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf, runTaken } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import type { ClosuresInput } from '../../sewing/closures/closure-input.ts';
import { spaceClosures } from '../../sewing/closures/closures.ts';
import { widestStep } from '../../sewing/made-run.ts';
import { otherSetBack } from '../../sewing/pieces/other-side.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { closureFields } from './fields.ts';
import { closuresInput, ROW_FIELDS } from './input.ts';

const output = outputOf(closureFields);
const { side } = closureFields.specs;

const marks = output({
  key: 'marks',
  name: words.marks,
  kind: 'run',
  reads: ROW_FIELDS,
  decides: ['count', 'gap', 'pitch', 'by', 'ends', 'follow'],
  step: { do: words.sew, datum: 'top-edge', stage: 'close', undoable: true },
  of: (fields, { count }) => row(closuresInput(fields), count),
});

/** The row as asked, or with as many as were begun. */
function row(input: ClosuresInput, count: number | undefined): Outcome<Run> {
  const rule = count === undefined ? input.rule : ({ by: 'count', count } as const);
  return mapped(spaceClosures({ ...input, rule }), ({ run }) => run);
}

/** What a row of closures gives: its places, how many they are, and where the other side lies. */
export const closuresOutputs: Outputs = {
  id: 'closures',
  rule: 1,
  fields: closureFields,
  outputs: [
    marks,
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: [],
      takes: [marks],
      adds: true,
      material: { kind: 'closure' },
      of: (_, { takes }) => ({ ok: true, value: runTaken(takes, marks).marks.length }),
    }),
    output({
      key: 'space',
      name: words.space,
      kind: 'length',
      reads: [],
      takes: [marks],
      of: (_, { takes }) => widestStep(runTaken(takes, marks), 'count'),
    }),
    output({
      key: 'other-side',
      name: words.otherSide,
      kind: 'length',
      reads: ['side', 'setBack', 'lap'],
      when: { field: 'side', is: side.is('meet', 'lap') },
      of: ({ side, setBack, lap }) => {
        const given = needed({ setBack });
        const over = side === 'lap' ? needed({ lap }).lap : ZERO;
        return otherSetBack({ ...given, lap: over });
      },
    }),
  ],
};
