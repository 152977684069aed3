import { dartsOutputWords as words } from '#words/outputs/darts-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { mapped } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { darts, levelRun } from '../../sewing/shaping/darts.ts';
import { DARTS_FIELDS, dartsFields, dartsInput, TAKERS, takersOf } from './fields.ts';
import { KEYS } from './keys.ts';
import { taken } from './taken.ts';

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
      key: 'levels',
      name: words.levels,
      kind: 'run',
      reads: [...DARTS_FIELDS, 'levels', 'girths', 'legs'],
      decides: ['levels'],
      when: { field: 'levels', is: given(dartsFields.specs.levels) },
      step: { do: words.markLevel, datum: 'zero', stage: 'cut', undoable: true },
      of: (fields): Comes<Run> => {
        const found = taken(fields);
        if (!found.ok) return found;
        const { levels } = found.value;
        return levels.length > 0
          ? { ok: true, value: levelRun(levels) }
          : { ok: false, absent: 'levels' };
      },
    }),
    output({
      ...asked,
      key: 'left',
      name: words.left,
      of: (fields) => mapped(darts(dartsInput(fields)), ({ left }) => left),
    }),
  ],
};
