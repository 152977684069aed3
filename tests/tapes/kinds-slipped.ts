import { phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import { allBut, over } from './short-view.ts';
import { cmStanding, cmTape, softTape } from './soft-tapes.ts';
import { centimetres, inches } from './tape-styles.ts';

/** Scales that don't go on as they seem to: it may ask, it may not be wrong. */
export const slipped = {
  'folded under the gap': kind(
    'any',
    'a tuck in the tape lies hidden: the two sides don’t agree',
    (random) => {
      const camera = phone(random, random.between(180, 280), 15);
      const whole = cmTape(random, camera);
      const [gap, tuck] = [random.between(14, 40), random.pick([1, -1, 2, 7.5, 10, 13])];
      const parts = [-1, 1].map((side) => {
        const scales = whole.scales.map((scale) => ({
          ...scale,
          id: side < 0 ? 'before the tuck' : 'after the tuck',
          zero: scale.zero - (side > 0 ? tuck : 0),
        }));
        return { ...whole, scales, ...(side < 0 ? { to: 0 } : { from: 0 }) };
      });
      const hiders = [over(random, whole, [0, 4], [gap, 60])];
      return onBench(random, { camera, tapes: parts, hiders, note: `${tuck} mm in the tuck` });
    },
  ),
  'cut and laid on': kind(
    'any',
    'two pieces of tape end to end, their numbers don’t follow',
    (random) => {
      const camera = phone(random, random.between(180, 280), 15);
      const whole = cmTape(random, camera);
      const jump = random.between(15, 400);
      const second = whole.scales.map((scale) => ({
        ...scale,
        id: 'second',
        zero: scale.zero - jump,
      }));
      const lay = { ...whole.lay, angle: whole.lay.angle + 0.01 * random.normal() };
      const tapes = [
        { ...whole, to: 0.5 },
        { ...whole, from: -0.5, lay, scales: second },
      ];
      return onBench(random, { camera, tapes, note: `${jump.toFixed(1)} mm left out` });
    },
  ),
  'gap without numbers beyond': kind(
    'any',
    'past the gap there are lines but no whole number',
    (random) => {
      const camera = phone(random, random.between(150, 230), 20);
      const tape = cmTape(random, camera);
      const gap = random.between(18, 45);
      const { across, height } = tape.scales[0]!.numbers!;
      const beyond = over(
        random,
        tape,
        [gap / 2 + 60, across - tape.width / 2 + 3.5],
        [120, height + 8],
      );
      const hiders = [over(random, tape, [0, 0], [gap, 60]), beyond];
      return onBench(random, { camera, tapes: [tape], hiders, note: 'lines only past the gap' });
    },
  ),
  'many small gaps': kind(
    'any',
    'strips of cloth over the lines at every few centimetres',
    (random) => {
      const camera = phone(random, random.between(170, 260), 20);
      const tape = cmTape(random, camera);
      const hiders = [-80, -45, -10, 30, 60, 95].map((s) =>
        over(random, tape, [s + random.between(-8, 8), 0], [random.between(6, 18), 60]),
      );
      return onBench(random, { camera, tapes: [tape], hiders, note: 'slips' });
    },
  ),
  'feet and inches': kind('any', 'inches that begin again at every foot', (random) => {
    const camera = phone(random, random.between(220, 360), 20);
    const tape = softTape(
      random,
      camera,
      (zero, width) => {
        const scale = inches(random, { ...cmStanding(zero), id: 'inch', last: 60 }, width, 16);
        const text = (value: number) =>
          value % 12 === 0 && value > 0 ? `${value / 12}F` : `${value % 12}`;
        return [{ ...scale, numbers: { ...scale.numbers!, text } }];
      },
      { length: 1524 },
    );
    return onBench(random, { camera, tapes: [tape], note: 'numbers begin again' });
  }),
  'numbers every five': kind('any', '5, 10, 15 and ten lines to the centimetre', (random) => {
    const camera = phone(random, random.between(190, 300), 20);
    const tape = softTape(random, camera, (zero, width) => [
      { ...centimetres(random, cmStanding(zero), width), numberEvery: 5 },
    ]);
    return onBench(random, { camera, tapes: [tape], note: 'every 5 cm' });
  }),
  'counting down': kind('any', 'upright numbers that fall from left to right', (random) => {
    const camera = phone(random, random.between(150, 240), 20);
    const tape = softTape(random, camera, (zero, width) => {
      const backwards = { ...cmStanding(zero + 1500), direction: -1 } as const;
      const scale = centimetres(random, backwards, width);
      return [{ ...scale, numbers: { ...scale.numbers!, turned: 0 } }];
    });
    return onBench(random, { camera, tapes: [tape], note: 'against the reading' });
  }),
  'nearly all worn off': kind('any', 'most of the print is gone', (random) => {
    const camera = phone(random, random.between(140, 220), 20);
    const tape = cmTape(random, camera);
    const surface = { ...tape.surface, worn: random.between(0.6, 0.75) };
    const hiders = random.chance(0.5) ? allBut(random, tape, random.between(60, 100)) : [];
    return onBench(random, { camera, tapes: [{ ...tape, surface }], hiders, note: 'worn' });
  }),
} as const satisfies Record<string, KindOf>;
