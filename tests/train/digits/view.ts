import type { Random } from '../../tapes/random.ts';

/** How a print was photographed and cut out. Lengths in pixels, shares of 1, angles in degrees. */
export interface View {
  /** Height of a digit. */
  readonly tall: number;
  readonly turn: number;
  readonly shear: number;
  readonly stretch: number;
  readonly tiltX: number;
  readonly tiltY: number;
  /** Standard deviation of the blur. */
  readonly blur: number;
  /** Below 1 ink has spread, above 1 it is starved. */
  readonly spread: number;
  readonly ground: number;
  readonly contrast: number;
  readonly light: boolean;
  readonly slopeX: number;
  readonly slopeY: number;
  readonly grain: number;
  readonly threads: readonly [number, number];
  readonly noise: number;
  /** Nothing that is drawn beside it is seen. */
  readonly alone: boolean;
  /** Cut out along its ink and drawn black on white, as on a page of numbers. */
  readonly cleaned: boolean;
  /** How far each edge of the box is off. */
  readonly offs: readonly [number, number, number, number];
}

/**
 * The worst that is drawn can still be told by eye, as sheets of cells show: blur up to a fourteenth of
 * a digit's height, noise of a tenth of its contrast, edges a twelfth off. A row's direction is known
 * before its numbers are cut out, so that few are turned.
 */
export function drawnView(random: Random): View {
  const tall = 10 * (26 / 10) ** random.unit();
  const contrast = random.between(0.2, 0.95);
  const shade = 0.3 * contrast;
  const jolt = 0.2 + 0.015 * tall;
  const off = () => jolt * Math.min(2, Math.max(-2, random.normal()));
  return {
    tall,
    turn: random.chance(0.3) ? random.between(-9, 9) : random.between(-4, 4),
    shear: random.between(-0.12, 0.12),
    stretch: random.between(0.85, 1.18),
    tiltX: random.between(-0.12, 0.12),
    tiltY: random.between(-0.12, 0.12),
    blur: random.between(0.3, 0.35 + 0.035 * tall),
    spread: random.between(0.6, 1.5),
    ground: random.between(110, 245),
    contrast,
    light: random.chance(0.3),
    slopeX: random.between(-shade, shade),
    slopeY: random.between(-shade, shade),
    grain: random.chance(0.3) ? random.between(0, 0.1) : 0,
    threads: [random.between(0.5, 2.5), random.between(0.5, 2.5)],
    noise: random.between(0, 0.08),
    alone: random.chance(0.3),
    cleaned: random.chance(0.5),
    offs: [off(), off(), off(), off()],
  };
}
