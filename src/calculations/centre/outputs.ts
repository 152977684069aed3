import { centreOutputWords as words } from '#words/outputs/centre-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf, runTaken } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { centreByCount } from '../../sewing/edging/centre.ts';
import { mapped } from '../../sewing/problem.ts';
import { centreFields } from './fields.ts';

const output = outputOf(centreFields);

/** Only with a pitch is there anything to measure. */
const measured = { field: 'pitch', is: given(centreFields.specs.pitch) } as const;

const holes = output({
  key: 'holes',
  name: words.holes,
  kind: 'run',
  reads: ['count', 'pitch'],
  when: measured,
  of: (fields) => mapped(centreByCount(fields), ({ run }) => needed({ run }).run),
});

/** What a counted row gives: its count, its middle, and with a pitch its places. */
export const centreOutputs: Outputs = {
  id: 'centre',
  rule: 1,
  fields: centreFields,
  outputs: [
    holes,
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: ['count'],
      adds: true,
      of: (fields) => mapped(centreByCount(fields), ({ count }) => count),
    }),
    output({
      key: 'middle',
      name: words.middle,
      kind: 'number',
      reads: ['count'],
      step: { do: words.mark, datum: 'done', stage: 'edge', undoable: true },
      of: (fields) =>
        mapped(centreByCount(fields), ({ centre: { hole, beyond } }) => hole + beyond),
    }),
    output({
      key: 'to-middle',
      name: words.toMiddle,
      kind: 'length',
      reads: [],
      takes: [holes],
      of: (_, { takes }) => ({ ok: true, value: exactLength(runTaken(takes, holes).length / 2) }),
    }),
    output({
      key: 'span',
      name: words.span,
      kind: 'length',
      reads: [],
      takes: [holes],
      of: (_, { takes }) => ({ ok: true, value: runTaken(takes, holes).length }),
    }),
  ],
};
