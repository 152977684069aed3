import { type Garment, type Kept, MOST_KEPT, shortened } from './garment.ts';

/** Whether one more can be kept on a garment, or taken off it. */
export function hasRoom(kept: readonly Kept[]): boolean {
  return kept.length < MOST_KEPT;
}

export function renamed(garment: Garment, name: string, changed: number): Garment {
  return edited(garment, { name: shortened(name) }, changed);
}

/** The same under another name, as a garment of its own. */
export function copied(garment: Garment, id: string, name: string, changed: number): Garment {
  return { ...garment, id, name: shortened(name), changed, edits: 1 };
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

/** With one calculation changed; just as it was when that is no longer kept on it. */
export function withChanged(
  garment: Garment,
  id: string,
  by: (kept: Kept) => Kept,
  changed: number,
): Garment {
  const old = garment.kept.find((kept) => kept.id === id);
  return old ? withKept(garment, by(old), changed) : garment;
}

/**
 * Without a calculation, which can be put back.
 * @throws RangeError when no more can be taken off: `hasRoom` is to be asked first
 */
export function withoutKept(garment: Garment, id: string, changed: number): Garment {
  const off = garment.kept.filter((kept) => kept.id === id);
  const kept = garment.kept.filter((one) => one.id !== id);
  return edited(garment, { kept, takenOff: within([...garment.takenOff, ...off]) }, changed);
}

/**
 * With what was taken off put back on, as the last of its stage.
 * @param spare its id when the one it had is in use
 */
export function putBack(garment: Garment, place: number, spare: string, changed: number): Garment {
  const back = garment.takenOff[place];
  if (!back) return garment;
  const inUse = garment.kept.some(({ id }) => id === back.id);
  const rest = { ...garment, takenOff: garment.takenOff.filter((_, i) => i !== place) };
  return withKept(rest, inUse ? { ...back, id: spare } : back, changed);
}

function edited(garment: Garment, change: Partial<Garment>, changed: number): Garment {
  return { ...garment, ...change, changed, edits: garment.edits + 1 };
}

function within(all: readonly Kept[]): readonly Kept[] {
  if (all.length <= MOST_KEPT) return all;
  throw new RangeError(`a garment keeps at most ${MOST_KEPT} calculations, not ${all.length}`);
}
