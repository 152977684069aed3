/** How a screen shows true sizes. */
export interface GlassScale {
  /** CSS pixels to a millimetre. */
  pxPerMm: number;
  /** Device pixels to a CSS pixel. */
  ratio: number;
}

/** A stretch of a run that fits on the glass, in mm from the datum. */
export interface GlassStretch {
  /** What lies on the line at the start of the glass: the datum, a mark, or an overlap mark. */
  from: number;
  to: number;
  /** Where the next stretch begins; undefined on the last one. */
  next: number | undefined;
}

/** The most stretches a run is stepped through: 20 m at 10 cm. */
const MOST = 200;
/** An overlap mark is drawn this far before the end of the glass, in mm, where no mark serves. */
const OVERLAP = 10;
/** A mark earlier on the glass than this share of it would make the next step too short. */
const LEAST_STEP = 1 / 3;

/**
 * Cuts a run into stretches as long as the glass. Each begins where a mark of the one before
 * can be laid on the work again: at its last mark, or at an overlap mark.
 *
 * @param length of the run, in mm; stretches cover all of it
 * @param room of the glass, in mm, more than 30
 * @throws RangeError when the glass is shorter
 */
export function stretchesOf(
  marks: readonly number[],
  length: number,
  room: number,
): GlassStretch[] {
  if (!(room > 3 * OVERLAP)) throw new RangeError(`nothing is shown on ${room} mm of glass`);
  const stretches: GlassStretch[] = [];
  let from = 0;
  while (stretches.length < MOST) {
    const to = from + room;
    if (to >= length) {
      stretches.push({ from, to, next: undefined });
      break;
    }
    const last = marks.filter((at) => at <= to && at >= from + room * LEAST_STEP).at(-1);
    const next = last ?? to - OVERLAP;
    stretches.push({ from, to, next });
    from = next;
  }
  return stretches;
}

/**
 * How far from the start of the glass a place is drawn, in CSS pixels: on a whole device pixel,
 * counted from where the stretch begins and never by steps.
 */
export function onGlass(at: number, from: number, { pxPerMm, ratio }: GlassScale): number {
  return Math.round((at - from) * pxPerMm * ratio) / ratio;
}

/** The long and the short side of a bank card, in mm. ISO/IEC 7810, ID-1. */
export const CARD = { long: 85.6, short: 53.98 } as const;

/** Two measurements that differ by more than this part are not both right. */
const AGREE = 0.01;
/** Pixels to a millimetre no screen has fewer or more of. Ours, no source. */
const LEAST_SCALE = 1.5;
const MOST_SCALE = 40;

export interface CardMeasure {
  side: keyof typeof CARD;
  /** CSS pixels. */
  px: number;
}

/** The scale two measurements of a card give, or by what part they differ. */
export function scaleFrom(
  one: CardMeasure,
  other: CardMeasure,
): { ok: true; pxPerMm: number } | { ok: false; off: number } {
  const first = one.px / CARD[one.side];
  const second = other.px / CARD[other.side];
  const off = Math.abs(first / second - 1);
  const pxPerMm = (one.px + other.px) / (CARD[one.side] + CARD[other.side]);
  if (!(off <= AGREE) || !isScale(pxPerMm)) return { ok: false, off };
  return { ok: true, pxPerMm };
}

/** Whether a number can be a screen's pixels to a millimetre. */
export function isScale(pxPerMm: number): boolean {
  return pxPerMm >= LEAST_SCALE && pxPerMm <= MOST_SCALE;
}
