/** The long and the short side of a bank card, in mm. ISO/IEC 7810, ID-1. */
export const CARD = { long: 85.6, short: 53.98 } as const;

/** Two measurements that differ by more than this part are not both right. */
const AGREE = 0.01;
/** Pixels to a millimetre no screen has fewer or more of: common practice, no source. */
const LEAST_SCALE = 1.5;
const MOST_SCALE = 40;

/** A side of a card as it was measured on the screen. */
export interface CardMeasure {
  side: keyof typeof CARD;
  /** CSS pixels. */
  px: number;
}

/**
 * The scale two measurements of a card give: their mean, each counting by the length it was
 * taken over. Or why they give none: they differ, by what part; or no screen is like that.
 */
export function scaleFrom(
  one: CardMeasure,
  other: CardMeasure,
): { ok: true; pxPerMm: number } | { ok: false; why: 'differ' | 'no-screen'; off: number } {
  const first = one.px / CARD[one.side];
  const second = other.px / CARD[other.side];
  const off = Math.max(first, second) / Math.min(first, second) - 1;
  if (!(off <= AGREE)) return { ok: false, why: 'differ', off };
  const pxPerMm = (one.px + other.px) / (CARD[one.side] + CARD[other.side]);
  return isScale(pxPerMm) ? { ok: true, pxPerMm } : { ok: false, why: 'no-screen', off };
}

/** Whether a number can be a screen's pixels to a millimetre. */
export function isScale(pxPerMm: number): boolean {
  return pxPerMm >= LEAST_SCALE && pxPerMm <= MOST_SCALE;
}
