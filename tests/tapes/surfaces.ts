import type { Random } from './random.ts';
import type { Surface } from './tape-spec.ts';

/** Coated cloth or soft plastic, printed dark on white or yellow. */
export function softSurface(random: Random): Surface {
  return {
    base: random.pick([228, 236, 215, 196]),
    ink: random.between(20, 70),
    opacity: 1,
    grain: random.between(0.008, 0.025),
    brushed: false,
    worn: random.chance(0.2) ? random.between(0.05, 0.2) : 0,
    shadow: random.between(0.1, 0.45),
  };
}

/** White print on red, blue or black. */
export function darkSurface(random: Random): Surface {
  const base = random.pick([30, 48, 70, 92]);
  return { ...softSurface(random), base, ink: random.between(200, 245) };
}

/** Bare steel, brushed along its length, engraved in black, with bands of glare across it. */
export function steelSurface(random: Random, glare: number): Surface {
  const bands = Array.from({ length: random.whole(1, 4) }, () => ({
    at: random.between(-150, 150),
    wide: random.between(8, 45),
    grey: random.between(-0.7, 1) * glare,
  }));
  const sheen = (s: number) =>
    bands.reduce((sum, { at, wide, grey }) => sum + grey * Math.exp(-(((s - at) / wide) ** 2)), 0);
  return {
    base: random.between(120, 185),
    ink: random.between(15, 60),
    opacity: 1,
    grain: random.between(0.02, 0.06),
    brushed: true,
    sheen,
    worn: random.between(0, 0.15),
    shadow: random.between(0.2, 0.5),
  };
}

/** Clear plastic: the ground is seen through it, a little paler. */
export function clearSurface(random: Random): Surface {
  return {
    base: 235,
    ink: random.between(10, 50),
    opacity: random.between(0.12, 0.3),
    grain: 0.005,
    brushed: false,
    worn: 0,
    shadow: random.between(0.05, 0.2),
  };
}

/** White or yellow plastic, or painted wood. */
export function stiffSurface(random: Random): Surface {
  return { ...softSurface(random), grain: 0.004, base: random.between(200, 240), worn: 0 };
}

/** Print or stitches straight on the ground. */
export function noSurface(ink: number): Surface {
  return { base: 0, ink, opacity: 0, grain: 0, brushed: false, worn: 0, shadow: 0 };
}
