import type { TextPart } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { askedKey, type Node, type NodeField, type PlanNode } from '../work-out/node.ts';
import { at } from './slots.ts';
import type { State } from './state.ts';
import { type FieldPlace, slotOf } from './typing.ts';

/** A typed length that may be another one. */
export interface GivingField {
  place: FieldPlace;
  /** What is typed there, of its one part. */
  typed: TextPart;
  /** In 1/8000 mm. */
  value: number;
}

/**
 * The typed lengths behind what is asked at a home that may be smaller or larger: those a calculation
 * says may give way, as an allowance or an ease, wherever they lie behind it; and a number of the garment
 * that such a field takes. Nearest first. A measure of a body gives nothing, nor what was read or is made.
 */
export function givingFields(state: State, home: string): GivingField[] {
  const { nodes } = state.answer;
  const found = new Map<string, GivingField>();
  // Whether a number was come upon through a field that may give way.
  const met = new Map<string, boolean>();
  const order = [askedKey(home)];
  const meet = (key: string, through: boolean) => {
    const before = met.get(key);
    if (before === true || before === through) return;
    met.set(key, through);
    order.push(key);
  };
  for (const key of order) {
    const node = nodes.get(key);
    if (node?.form !== 'plan') continue;
    const through = met.get(key) === true;
    for (const field of node.fields) {
      const gives = node.output ? givesWay(state, node, field) : through;
      for (const from of sourcesOf(field)) meet(from, gives);
      const giving = gives && typedOf(state, placeOf(state, node, field), field);
      if (giving) found.set(JSON.stringify(giving.place), giving);
    }
    // What the number is made of within its own work.
    for (const [, from] of node.takes) meet(from, through);
  }
  return [...found.values()];
}

function sourcesOf({ sources }: NodeField): string[] {
  return sources.flatMap(({ keys }) => keys);
}

function givesWay({ answer }: State, { id }: PlanNode, { key }: NodeField): boolean {
  const specs = answer.works.get(id)?.outputs?.fields.specs ?? {};
  return Object.hasOwn(specs, key) && specs[key]?.givesWay === true;
}

function placeOf({ answer }: State, { id, side, output }: Node, { key }: NodeField): FieldPlace {
  if (!output) return { quantity: id };
  const own = answer.works.get(id)?.work.own?.[side]?.[key] !== undefined;
  return { work: id, field: key, ...(own && { side }) };
}

function typedOf({ record }: State, place: FieldPlace, field: NodeField): GivingField | undefined {
  const parts = at(record, slotOf(place));
  const [typed, ...more] = Array.isArray(parts) ? (parts as unknown[]) : [];
  const isText = isObject(typed) && 'text' in typed && more.length === 0;
  // What was read with its doubt takes that, and has no value of its own.
  if (!isText || typeof field.value !== 'number') return undefined;
  return { place, typed: typed as unknown as TextPart, value: field.value };
}
