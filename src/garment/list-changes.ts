import { edited, within, withKept } from './changes.ts';
import { type Garment, shortened } from './garment.ts';

export function renamed(garment: Garment, name: string, changed: number): Garment {
  return edited(garment, { name: shortened(name) }, changed);
}

/** The same under another name, as a garment of its own. */
export function copied(garment: Garment, id: string, name: string, changed: number): Garment {
  return { ...garment, id, name: shortened(name), changed, edits: 1 };
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
