import type { Made } from './nodes.ts';
import type { Cell } from './round.ts';
import type { BlockTold } from './told.ts';

/** A work or a quantity, worked out. */
export interface Block {
  made: Made;
  /** By the key of the number. */
  cells: ReadonlyMap<string, Cell>;
  /** Homes of its steps that were passed over. */
  passed: string;
  says: BlockTold;
}

/** By id, in the garment's order. */
export type Blocks = ReadonlyMap<string, Block>;

/**
 * What may come out otherwise than before: what changed or came, and whatever reads that, near or far.
 * Where something went, what read it has changed.
 */
export function changedIn(now: ReadonlyMap<string, Made>, before: Blocks): Set<string> {
  const changed = new Set<string>();
  for (const [id, made] of now) if (before.get(id)?.made !== made) changed.add(id);
  if (changed.size === 0) return changed;
  const readers = new Map<string, string[]>();
  for (const [id, { links }] of now) {
    for (const link of links) {
      const there = readers.get(link);
      if (there) there.push(id);
      else readers.set(link, [id]);
    }
  }
  for (const id of changed) for (const reader of readers.get(id) ?? []) changed.add(reader);
  return changed;
}
