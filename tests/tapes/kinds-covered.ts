import { phone } from './circumstances.ts';
import { finger, pin, thread } from './hider.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import { allBut, over } from './short-view.ts';
import { cmTape, twoEdged } from './soft-tapes.ts';
import { onTape, spanOf } from './tape-across.ts';

/** Soft tapes on cloth with something lying over them. */
export const covered = {
  'short stretch': kind(
    'read',
    'only a few centimetres are seen between two pieces of cloth',
    (random) => {
      const camera = phone(random, random.between(110, 200), 20);
      const tape = cmTape(random, camera);
      const seen = random.between(38, 75);
      const hiders = allBut(random, tape, seen);
      return onBench(random, { camera, tapes: [tape], hiders, note: `${seen.toFixed(0)} mm` });
    },
  ),
  'fingers on it': kind('read', 'one to three fingertips hold the tape', (random) => {
    const camera = phone(random, random.between(180, 280), 20);
    const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true);
    const side = random.pick([-1, 1]);
    const hiders = Array.from({ length: random.whole(1, 3) }, (_, i) => {
      const tip = onTape(tape, -70 + 22 * i + 8 * random.normal(), side * random.between(-4, 9));
      return finger(random, tip, tape.lay.angle + side * (Math.PI / 2) + 0.15 * random.normal());
    });
    return onBench(random, { camera, tapes: [tape], hiders, note: 'fingers' });
  }),
  'pins and thread': kind(
    'read',
    'pins through the cloth and a loose thread over the tape',
    (random) => {
      const camera = phone(random, random.between(170, 280), 20);
      const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, false);
      const along = () => random.between(-0.4, 0.4) * spanOf(camera);
      const pins = Array.from({ length: random.whole(1, 5) }, () =>
        pin(random, onTape(tape, along(), random.between(-14, 14)), random.between(0, 6.28)),
      );
      const threads = Array.from({ length: random.whole(0, 2) }, () =>
        thread(random, onTape(tape, along(), random.between(-20, 20)), random.between(0, 6.28)),
      );
      return onBench(random, {
        camera,
        tapes: [tape],
        hiders: [...pins, ...threads],
        note: 'pins',
      });
    },
  ),
  'gap in the middle': kind(
    'read',
    'cloth lies over the middle, numbers on both sides',
    (random) => {
      const camera = phone(random, random.between(190, 300), 20);
      const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, false);
      const gap = [random.between(15, 55), 70] as const;
      const hiders = [over(random, tape, [random.between(-25, 25), 5], gap)];
      return onBench(random, { camera, tapes: [tape], hiders, note: 'gap' });
    },
  ),
} as const satisfies Record<string, KindOf>;
