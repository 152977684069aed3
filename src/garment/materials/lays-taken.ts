import { linkOf, takesLink } from '../record/parts.ts';
import type { Parts } from '../record/record.ts';
import type { Sound } from '../record/sound.ts';

/** The materials whose lays' lengths are taken, also by numbers of the garment that take them. */
export function laysTaken({ quantities }: Pick<Sound, 'quantities'>, taken: Parts): string[] {
  const met = new Set<string>();
  const lays = new Set<string>();
  const look = (parts: unknown) => {
    for (const part of Array.isArray(parts) ? parts : []) {
      const link = takesLink([part]) ? linkOf(part) : undefined;
      if (!link || !('quantity' in link) || met.has(link.quantity)) continue;
      met.add(link.quantity);
      const quantity = quantities.get(link.quantity);
      if (quantity?.lay !== undefined) lays.add(quantity.lay);
      look(quantity?.parts);
    }
  };
  look(taken);
  return [...lays];
}
