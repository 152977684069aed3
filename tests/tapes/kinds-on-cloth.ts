import { aimed, ground, phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import { cmStanding, cmTape, softTape, twoEdged } from './soft-tapes.ts';
import { centimetres, inches } from './tape-styles.ts';

const inchesOf = (parts: number): KindOf =>
  kind('read', `inches in parts of 1/${parts} on one edge`, (random) => {
    const camera = phone(random, random.between(170, 300), 20);
    const scales = (zero: number, width: number) => [
      inches(random, { ...cmStanding(zero), id: 'inch', last: 60 }, width, parts),
    ];
    const tape = softTape(random, camera, scales, { length: 1524 });
    return onBench(random, { camera, tapes: [tape], note: 'one scale' });
  });

const overGround = (name: 'stripes' | 'check' | 'felt' | 'board' | 'paper' | 'wood'): KindOf =>
  kind('read', `a tape of centimetres over ${name}`, (random) => {
    const camera = phone(random, random.between(160, 300), 25);
    const under = ground(random, name);
    const tapes = [random.chance(0.6) ? cmTape(random, camera) : twoEdged(random, camera, true)];
    // Stripes as close as graduations, and along or across the tape, lead astray the most.
    const close = { stripe: random.pick([2, 4, 10, 12.7, 25.4]), angle: 180 * random.unit() };
    return onBench(random, { camera, tapes, ground: { ...under, ...close }, note: name });
  });

/** Soft tapes lying flat on cloth, seen well. */
export const onCloth = {
  'cm tape on cloth': kind('read', 'centimetres on one edge, nearly square on', (random) => {
    const camera = phone(random, random.between(180, 320), 20);
    return onBench(random, { camera, tapes: [cmTape(random, camera)], note: 'one scale' });
  }),
  'inch tape on cloth': inchesOf(16),
  'eighths on cloth': inchesOf(8),
  'cm and inch from one end': kind('read', 'both edges, same zero', (random) => {
    const camera = phone(random, random.between(170, 300), 20);
    const tapes = [twoEdged(random, camera, false)];
    return onBench(random, { camera, tapes, note: 'same zero on both edges' });
  }),
  'cm and inch from both ends': kind('read', 'each edge has its own zero and way', (random) => {
    const camera = phone(random, random.between(170, 300), 20);
    const tapes = [twoEdged(random, camera, true)];
    return onBench(random, { camera, tapes, note: 'the edges run against each other' });
  }),
  'cm on both edges': kind(
    'read',
    'the same centimetres on both edges, one set of numbers',
    (random) => {
      const camera = phone(random, random.between(170, 300), 20);
      const tape = softTape(random, camera, (zero, width) => {
        const low = centimetres(random, cmStanding(zero), width);
        const numbers = { ...low.numbers!, across: width / 2 };
        const { numbers: _, ...bare } = low;
        return [
          { ...low, numbers },
          { ...bare, id: 'cm, other edge', edge: 'high' },
        ];
      });
      return onBench(random, { camera, tapes: [tape], note: 'numbers in the middle' });
    },
  ),
  'lines right across': kind('read', 'every centimetre line crosses the whole tape', (random) => {
    const camera = phone(random, random.between(160, 280), 20);
    const tape = softTape(random, camera, (zero, width) => {
      const scale = centimetres(random, cmStanding(zero), width);
      const [, ...shorter] = scale.lines;
      const height = Math.min(scale.numbers!.height, 4);
      const numbers = { ...scale.numbers!, place: 'before', height, across: width * 0.62 } as const;
      return [{ ...scale, lines: [{ every: 10, mm: width }, ...shorter], numbers }];
    });
    return onBench(random, { camera, tapes: [tape], note: 'numbers before their line' });
  }),
  'tape on stripes': overGround('stripes'),
  'tape on check': overGround('check'),
  'tape on felt': overGround('felt'),
  'tape on cutting board': overGround('board'),
  'tape on paper': overGround('paper'),
  'tape on wood': overGround('wood'),
  'webcam tape': kind(
    'read',
    'a low-resolution picture, about 3 px to the millimetre',
    (random) => {
      const [width, height] = random.pick([
        [640, 480],
        [800, 600],
        [1024, 768],
      ] as const);
      const span = width / random.between(2.8, 4.2);
      const camera = aimed(random, { width, height, span, tilt: 15 });
      return onBench(random, { camera, tapes: [cmTape(random, camera)], note: 'low resolution' });
    },
  ),
  'large photo': kind('read', 'twelve million pixels', (random) => {
    const span = random.between(220, 400);
    const camera = aimed(random, { width: 4000, height: 3000, span, tilt: 25 });
    const tapes = [twoEdged(random, camera, random.chance(0.5))];
    return onBench(random, { camera, tapes, note: 'large' });
  }),
} as const satisfies Record<string, KindOf>;
