import type { Garment } from '../../../src/garment/record/record.ts';
import { same } from '../../../src/garment/work-out/same.ts';
import type { Answer } from '../../../src/garment/work-out/work-out.ts';

/** Two answers about one record: every number, problem and path, and all that is said. */
export function alike(a: Answer, b: Answer): boolean {
  const told = ['unsound', 'troubles', 'conflicts', 'earlier', 'steps'] as const;
  return (
    a.values.size === b.values.size &&
    [...a.values].every(([key, result]) => same(result, b.values.get(key))) &&
    told.every((part) => JSON.stringify(a[part]) === JSON.stringify(b[part]))
  );
}

/** The record without what only counts. */
export function plain({ changed: _, edits: __, ...record }: Garment): unknown {
  return record;
}

export function frozen<One>(it: One): One {
  if (typeof it === 'object' && it !== null && !Object.isFrozen(it)) {
    Object.freeze(it);
    for (const inner of Object.values(it)) frozen(inner);
  }
  return it;
}
