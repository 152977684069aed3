import type { Garment } from '../garment/garment.ts';

/** Where something is kept, as an address holds it. */
export function placeOf(garment: string, kept: string): string {
  return `${garment}.${kept}`;
}

/** The garment and the thing kept on it that a draft was opened from, when they are still there. */
export function openedFrom(garments: readonly Garment[], place: string | undefined) {
  for (const garment of garments) {
    const kept = garment.kept.find(({ id }) => placeOf(garment.id, id) === place);
    if (kept) return { garment, kept };
  }
  return undefined;
}
