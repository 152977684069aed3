import { homeOf } from '../record/home.ts';
import { materialsWithout } from '../record/material.ts';
import type { Garment, PutPart, Quantity } from '../record/record.ts';
import { numberOf, soundOf } from '../record/sound.ts';
import { same } from '../work-out/same.ts';

/**
 * A garment begun anew from another: plans and links stay, what was made, decided and bought doesn't
 * go along. A quantity that was only measured is typed, from the first.
 */
export function copyAsNewStart(garment: Garment, id: string, name: string, now: number): Garment {
  const { pending: _, passed: __, materials, ...rest } = garment;
  const { facts, quantities } = soundOf(garment);
  const measured = [...quantities].flatMap(([own, quantity]): [string, Quantity][] => {
    const fact = facts.get(homeOf(own))?.at(-1)?.fact;
    const { kind, parts } = quantity;
    const typed = Array.isArray(parts) && parts.length > 0;
    if (!fact || typed) return [];
    const put: PutPart = { put: numberOf(fact), kind, was: { quantity: own } };
    return [[own, { ...quantity, parts: [put] }]];
  });
  return {
    ...rest,
    ...{ id, name, invented: false, changed: now, edits: 1 },
    quantities: { ...garment.quantities, ...Object.fromEntries(measured) },
    ...(materials && { materials: materialsWithout(materials, 'there') }),
    ...{ facts: {}, begun: {}, decisions: {} },
  };
}

/** What is made here and isn't, or is otherwise, in a garment that would replace this one: ids of facts. */
export function madeButNotIn(here: Garment, other: Garment): string[] {
  return Object.keys(here.facts).filter((id) => !same(here.facts[id], other.facts[id]));
}
