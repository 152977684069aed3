import type { CameraSpec } from './camera.ts';
import { aimed, ground, sharpLens } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { bent } from './lays.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { rule } from './rules.ts';
import { cmStanding, cmTape, twoEdged } from './soft-tapes.ts';
import { steelSurface, stiffSurface } from './surfaces.ts';
import type { TapeSpec } from './tape-spec.ts';
import { centimetres, inches } from './tape-styles.ts';

/** A small picture, as messages and shops have them. */
function small(random: Random, span: number, tilt: number): CameraSpec {
  const [width, height] = random.pick([
    [1000, 750],
    [800, 600],
    [1024, 683],
    [720, 960],
  ] as const);
  return aimed(random, { width, height, span, tilt });
}

const anySoft = (random: Random, camera: CameraSpec): TapeSpec =>
  random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, random.chance(0.5));

const perMm = ({ focal, distance }: CameraSpec) => focal / distance;

/** Tapes and rules as others photograph them: two hardships at once in a small picture. */
export const byOthers = {
  'small and coded': kind('read', 'a soft tape in a small picture, coarsely coded', (random) => {
    const camera = small(random, random.between(80, 130), 18);
    const coded = {
      noise: random.between(2, 6),
      contrast: random.between(0.6, 0.95),
      brightness: random.between(-20, 20),
      quality: random.whole(40, 60),
    };
    return onBench(random, { camera, tapes: [anySoft(random, camera)], sensor: coded, note: '' });
  }),
  'few numbers in a crop': kind('read', 'three to five numbers and no more', (random) => {
    const camera = small(random, random.between(42, 60), 15);
    return onBench(random, { camera, tapes: [anySoft(random, camera)], note: '' });
  }),
  'pale print': kind('read', 'print hardly darker than its tape, over stripes', (random) => {
    const camera = small(random, random.between(90, 140), 15);
    const tape = anySoft(random, camera);
    const { base } = tape.surface;
    const surface = { ...tape.surface, ink: base * random.between(0.5, 0.68), worn: 0 };
    const stripes = ground(random, random.pick(['stripes', 'check']));
    return onBench(random, { camera, tapes: [{ ...tape, surface }], ground: stripes, note: '' });
  }),
  'steep in half shadow': kind(
    'read',
    'from 25 to 38 degrees, a shadow’s edge over it',
    (random) => {
      const span = random.between(100, 150);
      const camera = { ...small(random, span, 0), tilt: random.between(25, 38) };
      const shadow = {
        dark: random.between(0.4, 0.65),
        at: random.between(-0.15, 0.15),
        angle: random.between(0, 6.28),
        soft: random.between(0.003, 0.03),
      };
      const light = { slope: 0.3, slopeAngle: random.between(0, 6.28), vignette: 0.2, shadow };
      return onBench(random, { camera, tapes: [anySoft(random, camera)], light, note: '' });
    },
  ),
  'unsteady and bent': kind('read', 'a bent tape, the phone moved a little', (random) => {
    const camera = small(random, random.between(80, 130), 15);
    const tape = cmTape(random, camera, { lay: { bend: bent(random) } });
    const motion = random.between(0.2, 0.4) * perMm(camera);
    const lens = { blur: 0.8, motion, motionAngle: random.between(0, 6.28) };
    return onBench(random, { camera, tapes: [tape], lens, note: '' });
  }),
  'long and narrow': kind('read', 'a picture cut to the tape', (random) => {
    const [width, height] = random.pick([
      [1600, 330],
      [330, 1600],
      [2200, 400],
    ] as const);
    const span = random.between(170, 260) * (width > height ? 1 : 0.2);
    const camera = aimed(random, { width, height, span, tilt: 8 });
    const angle = (width > height ? 0 : Math.PI / 2) + random.pick([0, Math.PI]);
    const lay = { x: 0, y: 0, angle: angle + 0.015 * random.normal() };
    const piece = { lay, width: random.between(14, 17) };
    const both = random.chance(0.5);
    const tape = both ? twoEdged(random, camera, true, piece) : cmTape(random, camera, piece);
    return onBench(random, { camera, tapes: [tape], lens: sharpLens(random), note: '' });
  }),
  'rule under a lamp': kind('read', 'a rule of steel or wood in patches of glare', (random) => {
    const camera = small(random, random.between(80, 130), 20);
    const surface = random.chance(0.5) ? steelSurface(random, 50) : stiffSurface(random);
    const stick = rule(random, camera, surface, (zero, width, length) => [
      centimetres(random, { ...cmStanding(zero), last: length / 10 }, width / 2),
      inches(
        random,
        { ...cmStanding(zero), id: 'inch', edge: 'high', last: Math.floor(length / 25.4) },
        width / 2,
        random.pick([8, 16]),
      ),
    ]);
    const glare = {
      grey: random.between(50, 120),
      x: random.between(-0.3, 0.3),
      y: random.between(-0.1, 0.1),
      radius: random.between(0.08, 0.16),
    };
    const light = { slope: 0.4, slopeAngle: random.between(0, 6.28), vignette: 0.3, glare };
    return onBench(random, { camera, tapes: [stick], light, note: '' });
  }),
} as const satisfies Record<string, KindOf>;
