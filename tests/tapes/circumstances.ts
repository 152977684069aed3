import type { CameraSpec } from './camera.ts';
import type { GroundKind, GroundSpec } from './ground.ts';
import type { LensSpec } from './lens.ts';
import type { LightSpec } from './light.ts';
import type { Random } from './random.ts';
import type { SensorSpec } from './sensor.ts';

const SIZES = [
  [1600, 1200],
  [2000, 1500],
  [1800, 1350],
  [1200, 1600],
  [2400, 1800],
  [1920, 1080],
] as const;

/** A phone over a bench that shows `span` mm from side to side, leaning up to `tilt` degrees. */
export function phone(random: Random, span: number, tilt: number): CameraSpec {
  const [width, height] = random.pick(SIZES);
  return aimed(random, { width, height, span, tilt });
}

export function aimed(
  random: Random,
  { width, height, span, tilt }: { width: number; height: number; span: number; tilt: number },
): CameraSpec {
  const focal = random.between(0.85, 1.15) * Math.max(width, height);
  return {
    width,
    height,
    focal,
    distance: (focal * span) / width,
    tilt: tilt * Math.sqrt(random.unit()),
    towards: random.between(0, 360),
    barrel: random.chance(0.4) ? random.between(0, 0.02) : 0,
  };
}

const CLOTHS: readonly GroundKind[] = ['plain weave', 'plain weave', 'twill', 'knit', 'felt'];

/** A cloth of one colour on a bench. */
export function cloth(random: Random): GroundSpec {
  return ground(random, random.pick(CLOTHS));
}

export function ground(random: Random, kind: GroundKind): GroundSpec {
  const grey = random.between(35, 200);
  return {
    kind,
    grey,
    second: random.chance(0.5)
      ? grey * random.between(0.4, 0.75)
      : Math.min(235, grey + random.between(25, 80)),
    thread: random.between(0.35, 1),
    stripe: random.between(4, 26),
    angle: random.between(0, 180),
    folds: random.between(0.02, 0.09),
  };
}

/** Light of an ordinary room, now and then with the maker's own shadow in it. */
export function roomLight(random: Random): LightSpec {
  const shadow = {
    dark: random.between(0.2, 0.5),
    at: random.between(-0.3, 0.3),
    angle: random.between(0, 6.28),
    soft: random.between(0.004, 0.08),
  };
  return {
    slope: random.between(0, 0.5),
    slopeAngle: random.between(0, 6.28),
    vignette: random.between(0, 0.35),
    ...(random.chance(0.3) ? { shadow } : {}),
  };
}

/** A lens that is nearly sharp. */
export function sharpLens(random: Random): LensSpec {
  return { blur: random.between(0.5, 1.1), motion: 0, motionAngle: 0 };
}

export function sensor(random: Random): SensorSpec {
  return {
    noise: random.between(1, 5),
    contrast: random.between(0.75, 1),
    brightness: random.between(-12, 12),
    quality: random.chance(0.6) ? random.whole(60, 95) : 100,
  };
}
