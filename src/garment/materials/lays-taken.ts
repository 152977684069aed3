import type { Parts } from '../record/record.ts';
import type { Sound } from '../record/sound.ts';

/** The materials whose lays' lengths are taken, also by numbers of the garment that take them. */
export function laysTaken({ quantities }: Pick<Sound, 'quantities'>, taken: Parts): string[] {
  const met = new Set<string>();
  const lays = new Set<string>();
  const look = (parts: Parts) => {
    for (const part of parts) {
      if (!('link' in part && 'quantity' in part.link) || met.has(part.link.quantity)) continue;
      met.add(part.link.quantity);
      const quantity = quantities.get(part.link.quantity);
      if (quantity?.lay !== undefined) lays.add(quantity.lay);
      look(quantity?.parts ?? []);
    }
  };
  look(taken);
  return [...lays];
}
