import { phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import { everyMillimetre, millimetres, rule, sparse } from './rules.ts';
import { allBut } from './short-view.ts';
import { cmStanding, twoEdged } from './soft-tapes.ts';
import { stiffSurface } from './surfaces.ts';
import { inches } from './tape-styles.ts';

/** Scales whose unit or slant is easily mistaken: a reader may ask, it may not be wrong. */
export const unitTraps = {
  'tenths, few numbers': kind(
    'any',
    'an inch in tenths, two or three numbers, no other scale',
    (random) => {
      const camera = phone(random, random.between(110, 180), 20);
      const plastic = rule(
        random,
        camera,
        stiffSurface(random),
        (zero, width) => [inches(random, { ...cmStanding(zero), id: 'inch', last: 12 }, width, 10)],
        { length: 305 },
      );
      const hiders = allBut(random, plastic, random.between(55, 85));
      return onBench(random, { camera, tapes: [plastic], hiders, note: 'tenths' });
    },
  ),
  'millimetre digits, few numbers': kind(
    'any',
    'digits on every millimetre, two or three centimetres',
    (random) => {
      const camera = phone(random, random.between(70, 110), 15);
      const paper = rule(random, camera, stiffSurface(random), (zero, _, length) => [
        everyMillimetre(random, zero, length),
      ]);
      const hiders = allBut(random, paper, random.between(24, 40));
      return onBench(random, { camera, tapes: [paper], hiders, note: 'digits on mm' });
    },
  ),
  'tens of what': kind(
    'any',
    '10, 20, 30 with ten lines between: millimetres or centimetres',
    (random) => {
      const inCentimetres = random.chance(0.5);
      const camera = phone(
        random,
        inCentimetres ? random.between(350, 700) : random.between(60, 120),
        20,
      );
      const surface = stiffSurface(random);
      if (!inCentimetres) {
        const tape = rule(random, camera, surface, (zero, _, length) => [
          millimetres(random, { ...cmStanding(zero), id: 'mm', last: length }, false),
        ]);
        return onBench(random, { camera, tapes: [tape], note: 'millimetres' });
      }
      const stake = rule(
        random,
        camera,
        surface,
        (zero) => {
          const scale = sparse(
            random,
            { ...cmStanding(zero), last: 200 },
            { subdivisions: 1, numberEvery: 10 },
          );
          const lines = [
            { every: 10, mm: 26 },
            { every: 5, mm: 19 },
            { every: 1, mm: 13 },
          ];
          const numbers = { ...scale.numbers!, height: 20, across: 38 };
          return [{ ...scale, lines, stroke: 1.6, numbers }];
        },
        { length: 2000, width: 120 },
      );
      return onBench(random, { camera, tapes: [stake], note: 'centimetres' });
    },
  ),
  'slanted lines': kind('any', 'lines that lean, few numbers, on one row or on both', (random) => {
    const camera = phone(random, random.between(110, 200), 30);
    const lean = random.pick([-1, 1]) * random.between(0.15, 0.6);
    const tape = twoEdged(random, camera, random.chance(0.5), { width: 22 });
    const scales = tape.scales.map((scale) => ({ ...scale, lean }));
    const hiders = random.chance(0.6) ? allBut(random, tape, random.between(38, 60)) : [];
    return onBench(random, { camera, tapes: [{ ...tape, scales }], hiders, note: 'leaning' });
  }),
} as const satisfies Record<string, KindOf>;
