import { dartsOutputWords as words } from '#words/outputs/darts-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { darts } from '../../sewing/darts.ts';
import { mapped } from '../../sewing/problem.ts';
import { DARTS_FIELDS, dartsFields, dartsInput, TAKERS, takersOf } from './fields.ts';
import { KEYS } from './keys.ts';

const output = outputOf(dartsFields);
const asked = { kind: 'length', reads: DARTS_FIELDS } as const;

/** What seams and darts take: in all, at each place, and what none of them takes. */
export const dartsOutputs: Outputs = {
  id: 'darts',
  rule: 1,
  fields: dartsFields,
  outputs: [
    output({
      ...asked,
      key: 'intake',
      name: words.intake,
      of: (fields) => mapped(darts(dartsInput(fields)), ({ intake }) => intake),
    }),
    ...TAKERS.map((taker) =>
      output({
        ...asked,
        key: KEYS[taker],
        name: words.each[taker],
        when: { field: taker, is: given(dartsFields.specs[taker]) },
        step: { do: words.do[taker], datum: 'stitch-line', stage: 'cut', undoable: true },
        of: (fields) =>
          mapped(
            darts(dartsInput(fields)),
            ({ each }) => each[takersOf(fields).indexOf(taker)] ?? ZERO,
          ),
      }),
    ),
    output({
      ...asked,
      key: 'left',
      name: words.left,
      of: (fields) => mapped(darts(dartsInput(fields)), ({ left }) => left),
    }),
  ],
};
