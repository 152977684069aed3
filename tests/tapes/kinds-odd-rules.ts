import { phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { everyMillimetre, millimetres, rule, sparse } from './rules.ts';
import { cmStanding } from './soft-tapes.ts';
import { darkSurface, steelSurface, stiffSurface } from './surfaces.ts';
import type { Standing } from './tape-styles.ts';

const low = (id: string, zero: number, last: number): Standing => ({
  ...cmStanding(zero),
  id,
  last,
});

const closeUp = (random: Random) => phone(random, random.between(100, 190), 22);

/** Rules and stakes graduated or numbered in rarer ways. */
export const oddRules = {
  'only half centimetres': kind('any', 'lines every 5 mm only', (random) => {
    const camera = phone(random, random.between(160, 300), 20);
    const bare = rule(
      random,
      camera,
      stiffSurface(random),
      (zero, _, length) => [
        sparse(random, low('cm', zero, length / 10), { subdivisions: 2, numberEvery: 1 }),
      ],
      { length: 500 },
    );
    return onBench(random, { camera, tapes: [bare], note: '5 mm' });
  }),
  'two densities': kind('read', 'half millimetres in the first centimetres only', (random) => {
    const camera = closeUp(random);
    const steel = rule(
      random,
      camera,
      steelSurface(random, 15),
      (zero, _, length) => {
        const scale = millimetres(random, low('mm', zero, length), false);
        const last = 10 * random.whole(3, 6);
        return [{ ...scale, finer: { first: 0, last, times: 2 } }];
      },
      // Both densities in the picture, or it is no picture of two.
      { middle: random.between(25, 60) },
    );
    return onBench(random, { camera, tapes: [steel], note: 'two densities' });
  }),
  'digit on every millimetre': kind(
    'any',
    'small digits 1 to 9 between the centimetre numbers',
    (random) => {
      const camera = phone(random, random.between(80, 130), 15);
      const paper = rule(random, camera, stiffSurface(random), (zero, _, length) => [
        everyMillimetre(random, zero, length),
      ]);
      return onBench(random, { camera, tapes: [paper], note: 'digits on mm' });
    },
  ),
  'stake in tens': kind(
    'any',
    'white on dark, lines each centimetre, numbers 10, 20, 30',
    (random) => {
      const camera = phone(random, random.between(500, 1000), 15);
      const stake = rule(
        random,
        camera,
        darkSurface(random),
        (zero) => {
          const scale = sparse(random, low('cm', zero, 200), { subdivisions: 1, numberEvery: 10 });
          const numbers = { ...scale.numbers!, height: 14, across: 24 };
          const lines = [
            { every: 10, mm: 14 },
            { every: 1, mm: 7 },
          ];
          return [{ ...scale, lines, stroke: 1.5, numbers }];
        },
        { length: 2000, width: 40 },
      );
      return onBench(random, { camera, tapes: [stake], note: 'tens of cm' });
    },
  ),
  'vernier beside': kind('any', 'a short plate of 9 mm in ten parts against the rule', (random) => {
    const camera = phone(random, random.between(90, 150), 15);
    const main = rule(random, camera, steelSurface(random, 15), (zero, _, length) => [
      { ...millimetres(random, low('mm', zero, length), false), edge: 'high' },
    ]);
    const [c, s] = [Math.cos(main.lay.angle), Math.sin(main.lay.angle)];
    const off = main.width / 2 + 4.5;
    const lay = { ...main.lay, x: main.lay.x - off * s, y: main.lay.y + off * c };
    const nine = {
      ...millimetres(random, low('vernier', 2, 10), false),
      jitter: (k: number) => -0.1 * k,
    };
    const { numbers: _, ...unnumbered } = nine;
    const plate = { ...main, width: 9, from: -6, to: 40, lay, scales: [], unread: [unnumbered] };
    return onBench(random, { camera, tapes: [main, plate], note: 'vernier' });
  }),
} as const satisfies Record<string, KindOf>;
