import { phone } from './circumstances.ts';
import { printBar } from './ink-sheet.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import { allBut, over } from './short-view.ts';
import { cmTape, twoEdged } from './soft-tapes.ts';

/** Scenes where a reader is easily sure of something wrong: it may ask, it may not be wrong. */
export const traps = {
  'stroke beside numbers': kind(
    'any',
    'three numbers, each with a stroke before it like a 1',
    (random) => {
      const camera = phone(random, random.between(110, 180), 15);
      const tape = cmTape(random, camera, { middle: random.between(30, 80) });
      const scale = tape.scales[0]!;
      const { height, across } = scale.numbers!;
      const numbers = { ...scale.numbers!, place: 'on', height: Math.min(height, 4) } as const;
      const decorate: typeof tape.decorate = (sheet) => {
        for (let value = 1; value < 30; value++) {
          const s = scale.zero + 10 * value - numbers.height * (value < 10 ? 0.75 : 1.1);
          printBar(sheet, [s - 0.25, s + 0.25], [across - 0.65 * height, across + 0.65 * height]);
        }
      };
      const tapes = [{ ...tape, scales: [{ ...scale, numbers }], decorate }];
      return onBench(random, {
        camera,
        tapes,
        hiders: allBut(random, tape, 34),
        note: 'no 1 there',
      });
    },
  ),
  'about a hundred': kind('any', 'three or four numbers between 97 and 104', (random) => {
    const camera = phone(random, random.between(110, 180), 20);
    const tape = cmTape(random, camera, { middle: random.between(975, 1035) });
    const hiders = allBut(random, tape, random.between(30, 48));
    return onBench(random, { camera, tapes: [tape], hiders, note: '97 to 104' });
  }),
  'first digits covered': kind(
    'any',
    'numbers past 100 with cloth over part of the digits',
    (random) => {
      const camera = phone(random, random.between(110, 200), 15);
      const tape = cmTape(random, camera, { middle: random.between(1080, 1400) });
      const across = tape.scales[0]!.numbers!.across - tape.width / 2 + random.between(-0.5, 1.5);
      const hiders = [over(random, tape, [0, across + 12], [600, 24])];
      return onBench(random, { camera, tapes: [tape], hiders, note: 'digits cut off' });
    },
  ),
  'one number only': kind('any', 'a stretch with a single whole number', (random) => {
    const camera = phone(random, random.between(90, 140), 15);
    const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true);
    const hiders = allBut(random, tape, random.between(14, 26));
    return onBench(random, { camera, tapes: [tape], hiders, note: 'one number' });
  }),
  'other edge unnumbered': kind(
    'any',
    'the other edge runs the other way, its numbers covered',
    (random) => {
      const camera = phone(random, random.between(130, 230), 20);
      const tape = twoEdged(random, camera, true, { width: 22 });
      const inch = tape.scales.find(({ id }) => id === 'inch')!;
      const { across, height } = inch.numbers!;
      const off = (inch.edge === 'low' ? across : tape.width - across) - tape.width / 2;
      const hiders = [-1, 1].map((side) =>
        over(random, tape, [side * 62, off], [100, height + 1.5]),
      );
      return onBench(random, { camera, tapes: [tape], hiders, note: 'own zero on each edge' });
    },
  ),
  'numbers nearer the other edge': kind(
    'any',
    'both rows of numbers stand past the middle',
    (random) => {
      const camera = phone(random, random.between(150, 240), 20);
      const tape = twoEdged(random, camera, random.chance(0.5), { width: 24 });
      const scales = tape.scales.map((scale) => {
        const height = Math.min(3.4, scale.numbers!.height);
        return { ...scale, numbers: { ...scale.numbers!, height, across: 13.9 } };
      });
      return onBench(random, { camera, tapes: [{ ...tape, scales }], note: 'numbers cross over' });
    },
  ),
} as const satisfies Record<string, KindOf>;
