import { type Garment, type Kept, MOST_KEPT, shortened } from './garment.ts';

/** Whether one more can be kept on a garment, or taken off it. */
export function hasRoom(kept: readonly Kept[]): boolean {
  return kept.length < MOST_KEPT;
}

/**
 * With a calculation kept on it: in place of the one with the same id, or as the last.
 * @throws RangeError when there is no room: `hasRoom` is to be asked first
 */
export function withKept(garment: Garment, kept: Kept, changed: number): Garment {
  const named = { ...kept, name: shortened(kept.name) };
  const there = garment.kept.some(({ id }) => id === kept.id);
  const all = there
    ? garment.kept.map((old) => (old.id === kept.id ? named : old))
    : [...garment.kept, named];
  return edited(garment, { kept: within(all) }, changed);
}

/** With a change, which is counted. */
export function edited(garment: Garment, change: Partial<Garment>, changed: number): Garment {
  return { ...garment, ...change, changed, edits: garment.edits + 1 };
}

/**
 * What is kept, when it is not too much.
 * @throws RangeError when it is: `hasRoom` is to be asked first
 */
export function within(all: readonly Kept[]): readonly Kept[] {
  if (all.length <= MOST_KEPT) return all;
  throw new RangeError(`a garment keeps at most ${MOST_KEPT} calculations, not ${all.length}`);
}
