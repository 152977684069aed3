import { aimed, cloth, phone, sharpLens } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { bent, twisted, waving } from './lays.ts';
import { onBench } from './on-bench.ts';
import { cmTape, twoEdged } from './soft-tapes.ts';
import { onTape, spanOf } from './tape-across.ts';

/** Soft tapes on cloth in hard light, bends, or with things over them. */
export const hardOnCloth = {
  'steep view': kind('read', 'seen from 25 to 40 degrees off square', (random) => {
    const tilt = random.between(25, 40);
    const camera = { ...phone(random, random.between(160, 260), 0), tilt };
    const tapes = [random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true)];
    return onBench(random, { camera, tapes, note: 'steep' });
  }),
  'bent tape': kind('read', 'curved in its own plane', (random) => {
    const camera = phone(random, random.between(160, 260), 15);
    const tapes = [cmTape(random, camera, { lay: { bend: bent(random) } })];
    return onBench(random, { camera, tapes, note: 'bent' });
  }),
  'waving tape': kind('read', 'lifting off the cloth and lying down again', (random) => {
    const camera = phone(random, random.between(160, 260), 20);
    const tapes = [cmTape(random, camera, { lay: waving(random) })];
    return onBench(random, { camera, tapes, note: 'waves' });
  }),
  'twisted end': kind('read', 'turning on its edge towards one end', (random) => {
    const camera = phone(random, random.between(180, 280), 15);
    const tapes = [cmTape(random, camera, { lay: twisted(random, spanOf(camera)) })];
    return onBench(random, { camera, tapes, note: 'twisted at one end' });
  }),
  'glare and shadow': kind('read', 'a patch of glare and the edge of a shadow', (random) => {
    const camera = phone(random, random.between(170, 280), 20);
    const glare = {
      grey: random.between(40, 120),
      x: random.between(-0.3, 0.3),
      y: random.between(-0.15, 0.15),
      radius: random.between(0.08, 0.2),
    };
    const shadow = {
      dark: random.between(0.3, 0.65),
      at: random.between(-0.15, 0.15),
      angle: random.between(0, 6.28),
      soft: random.between(0.003, 0.04),
    };
    const light = { slope: 0.4, slopeAngle: random.between(0, 6.28), vignette: 0.3, glare, shadow };
    return onBench(random, { camera, tapes: [cmTape(random, camera)], light, note: 'glare' });
  }),
  'dim and coded': kind('read', 'noise, low contrast, coarse photo coding', (random) => {
    const camera = phone(random, random.between(150, 240), 20);
    const dim = {
      noise: random.between(5, 10),
      contrast: random.between(0.4, 0.7),
      brightness: random.between(-45, -10),
      quality: random.whole(30, 60),
    };
    const tapes = [random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true)];
    return onBench(random, { camera, tapes, sensor: dim, note: 'dim' });
  }),
  'moved or out of focus': kind('read', 'blurred by less than the lines’ distance', (random) => {
    const camera = phone(random, random.between(140, 220), 20);
    const perMm = camera.focal / camera.distance;
    const moved = random.chance(0.5);
    const lens = {
      blur: (moved ? 0.1 : random.between(0.15, 0.26)) * perMm,
      motion: moved ? random.between(0.3, 0.55) * perMm : 0,
      motionAngle: random.between(0, 6.28),
    };
    return onBench(random, { camera, tapes: [cmTape(random, camera)], lens, note: 'blur' });
  }),
  'shallow focus': kind('read', 'near and far out of focus', (random) => {
    const camera = {
      ...phone(random, random.between(150, 240), 0),
      tilt: random.between(15, 38),
      towards: random.pick([90, 270]),
    };
    const depth = { blur: random.between(2, 5), sharpAt: random.between(-0.15, 0.15) };
    const tapes = [cmTape(random, camera, { lay: { angle: random.between(-0.9, 0.9) } })];
    return onBench(random, { camera, tapes, lens: { ...sharpLens(random), depth }, note: 'depth' });
  }),
  'wide angle': kind('read', 'close up with the barrel distortion of a wide angle', (random) => {
    const near = aimed(random, {
      width: 2000,
      height: 1500,
      span: random.between(140, 240),
      tilt: 20,
    });
    const camera = { ...near, barrel: random.between(0.02, 0.06) };
    const tapes = [random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true)];
    return onBench(random, { camera, tapes, ground: cloth(random), note: 'barrel' });
  }),
  'two tapes': kind('read', 'two tapes in one picture', (random) => {
    const camera = phone(random, random.between(190, 300), 20);
    const first = cmTape(random, camera);
    const second = twoEdged(random, camera, true);
    const beside = onTape(first, 0, random.pick([-1, 1]) * random.between(32, 50));
    const lay = { x: beside[0], y: beside[1], angle: first.lay.angle + 0.1 * random.normal() };
    const other = second.scales.map((scale) => ({ ...scale, id: `second ${scale.id}` }));
    return onBench(random, {
      camera,
      tapes: [first, { ...second, lay, scales: other }],
      note: 'two',
    });
  }),
} as const satisfies Record<string, KindOf>;
