import { choice } from '../../../src/calculation/field-spec.ts';
import { type Outputs, outputOf, sumTaken } from '../../../src/calculation/output.ts';
import { schema } from '../../../src/calculation/schema.ts';
import type { Work } from '../../../src/garment/record/record.ts';
import { typed } from './garments.ts';

const yesNo = { no: 'no', yes: 'yes' };
const fields = schema(
  { first: 'First', second: 'Second', third: 'Third' },
  { first: choice(yesNo), second: choice(yesNo), third: choice(yesNo) },
);
type Field = keyof typeof fields.specs;
const output = outputOf(fields);
const number = { kind: 'number' as const, reads: [] };
const alone = (key: string, value: number, field: Field) =>
  output({
    ...{ ...number, key, name: key, when: { field, is: fields.specs[field].is('yes') } },
    of: () => ({ ok: true, value }),
  });
const one = alone('one', 1, 'first');
const other = alone('other', 2, 'second');
const sumOf = (key: string, ...takes: (typeof one)[]) => ({
  ...{ ...number, key, name: key, takes },
  of: (_: unknown, { takes }: { takes: Parameters<typeof sumTaken>[0] }) => ({
    ...{ ok: true as const, value: sumTaken(takes) },
  }),
});
const both = output(sumOf('both', one, other));
const own = output({
  ...sumOf('own', one, both),
  when: { field: 'third', is: fields.specs.third.is('yes') },
});

/** Numbers that are there by what is chosen, and sums of them: of one or two, of a sum, and by a choice of its own. */
export const YES_NO: Outputs = {
  ...{ id: 'yes-no', rule: 1, fields },
  outputs: [one, other, both, own, output(sumOf('far', both))],
};

/** One in which these are there. */
export const yesTo = (...chosen: Field[]): Work => ({
  ...{ name: 'Numbers', calculation: YES_NO.id, rank: 1 },
  fields: Object.fromEntries(chosen.map((field) => [field, typed('yes')])),
});
