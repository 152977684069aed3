import { count, type FieldSpec, length, number } from '../../calculation/field-spec.ts';
import type { Kind } from '../../calculation/output.ts';
import { maybeRun } from '../../calculation/run-field.ts';
import { homeOf } from '../record/home.ts';
import type { Quantity } from '../record/record.ts';
import type { KnownFact, Seen } from '../record/sound.ts';
import { type FieldText, fieldText } from './field-text.ts';
import type { Places } from './links.ts';
import type { FactNode, NodeField, PlanNode } from './node.ts';
import { nodeField } from './node-field.ts';

/** How the number of a quantity is read. */
export const QUANTITY_SPECS: Readonly<Record<Kind, FieldSpec<unknown>>> = {
  length: length({}),
  count: count({}),
  number: number({}),
  run: maybeRun(''),
};

/** A quantity's number: measured, which replaces what was typed or read; else its parts. */
export function quantityNode(
  id: string,
  quantity: Quantity,
  facts: readonly KnownFact[],
  places: Places,
  seen: Seen,
): PlanNode | FactNode {
  const { kind, plusMinus = 0 } = quantity;
  const base = { key: homeOf(id), id, side: '', kind };
  const fact = facts.at(-1);
  if (fact && kind !== 'run') {
    return { ...base, form: 'fact', fact, sources: [], own: ['fact', fact.id, fact.fact] };
  }
  const text = textOnce(quantity, seen);
  const spec = QUANTITY_SPECS[kind];
  const readOf =
    ({ text: one }: FieldText): NodeField['read'] =>
    (how) =>
      spec.read(one, how);
  // How sure a reading alone is is kept beside it.
  const site = { side: '', owner: id, places, read: new Map(), sure: plusMinus > 0 };
  const field = nodeField('value', text, { kind: spec.kind, readOf }, site);
  const sources = field.trouble ? [] : field.sources.flatMap(({ keys }) => keys);
  return {
    ...base,
    form: 'plan',
    plusMinus,
    fields: [field],
    takes: [],
    bends: [],
    early: [],
    begun: undefined,
    asked: false,
    sources,
    own: ['plan', kind, plusMinus, ownOf(field)],
  };
}

/** What a number's result depends on of one of its fields, besides the numbers it takes. */
export function ownOf({ key, text, trouble, value, sources }: NodeField) {
  return [key, text.text, text.how, trouble, value, sources];
}

function textOnce(quantity: Quantity, seen: Seen): FieldText {
  const before = seen.get(quantity) as FieldText | undefined;
  if (before) return before;
  const text = fieldText(quantity.parts);
  seen.set(quantity, text);
  return text;
}
