import { tiersOutputWords as words } from '#words/outputs/tiers-output-words.ts';
import { type Output, type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { MOST_TIERS, tiers } from '../../sewing/fullness/tiers.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import { TIERS_FIELDS, tiersFields, tiersInput } from './fields.ts';
import { tierOutputs } from './tier-outputs.ts';

const output = outputOf(tiersFields);
const asked = { reads: TIERS_FIELDS } as const;

const clothWide = output({
  key: 'cloth-wide',
  name: words.clothWide,
  kind: 'length',
  bound: 'most',
  reads: ['cloth'],
  of: ({ cloth }) =>
    answerUnless(mustBePositive('cloth', cloth), () => ({ ok: true, value: cloth })),
});

const each: Output[] = [];
for (let i = 0; i < MOST_TIERS; i++) each.push(...tierOutputs(i, each));

/** What tiers give: each with its depth, strip and marks, and the cloth for all. */
export const tiersOutputs: Outputs = {
  id: 'tiers',
  rule: 1,
  fields: tiersFields,
  outputs: [
    ...each,
    clothWide,
    output({
      ...asked,
      key: 'cloth',
      name: words.cloth,
      kind: 'length',
      bound: 'least',
      adds: true,
      material: { kind: 'cloth', across: clothWide },
      of: (fields) => mapped(tiers(tiersInput(fields)), ({ cloth }) => cloth),
    }),
    output({
      ...asked,
      key: 'full',
      name: words.full,
      kind: 'number',
      of: (fields) => mapped(tiers(tiersInput(fields)), ({ full }) => full),
    }),
    output({
      ...asked,
      key: 'long',
      name: words.long,
      kind: 'length',
      of: (fields) => mapped(tiers(tiersInput(fields)), ({ long }) => long),
    }),
    output({
      ...asked,
      key: 'left',
      name: words.left,
      kind: 'length',
      bound: 'most',
      of: (fields) => {
        const found = tiers(tiersInput(fields));
        if (!found.ok) return found;
        const { left } = found.value;
        return left === undefined
          ? { ok: false, absent: 'long' }
          : { ok: true, value: exactLength(left) };
      },
    }),
  ],
};
