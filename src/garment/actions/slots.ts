import type { Garment } from '../record/record.ts';

/** A place in a record: the keys that lead there. */
export type Slot = readonly string[];

/** One place changed; undefined is nothing there. */
export interface Edit {
  slot: Slot;
  before: unknown;
  after: unknown;
}

type Tree = Readonly<Record<string, unknown>>;

/** What is at a place of a record. */
export function at(record: Garment, slot: Slot): unknown {
  let it: unknown = record;
  for (const key of slot) {
    const inside = typeof it === 'object' && it !== null && Object.hasOwn(it, key);
    it = inside ? (it as Tree)[key] : undefined;
  }
  return it;
}

/** What brings something to a place, whatever is there now. */
export function edit(record: Garment, slot: Slot, after: unknown): Edit {
  return { slot, before: at(record, slot), after };
}

/** The record with edits made, in order; nothing that they don't lead through is made anew. */
export function edited(record: Garment, edits: readonly Edit[]): Garment {
  return edits.reduce((made, { slot, after }) => put(made, slot, after) as Garment, record);
}

/** The edits that take these back. */
export function inverse(edits: readonly Edit[]): Edit[] {
  return edits.map(({ slot, before, after }) => ({ slot, before: after, after: before })).reverse();
}

/** A side without numbers of its own leaves no shell, nor does what a garment needn't have. */
const LEAVES_NO_SHELL: ReadonlySet<string | undefined> = new Set([
  'own',
  'moved',
  'movedSides',
  'passed',
  'notes',
  'materials',
  'lays',
]);

function put(it: unknown, slot: Slot, value: unknown, inOwn = false): unknown {
  const [key, ...rest] = slot;
  if (key === undefined) return value;
  const tree = (typeof it === 'object' && it !== null ? it : {}) as Tree;
  const there = Object.hasOwn(tree, key) ? tree[key] : undefined;
  const own = inOwn || LEAVES_NO_SHELL.has(key);
  const inner = put(there, rest, value, own);
  if (inner !== undefined) return { ...tree, [key]: inner };
  const { [key]: _, ...left } = tree;
  return inOwn && Object.keys(left).length === 0 ? undefined : left;
}
