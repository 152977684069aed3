import { phone } from './circumstances.ts';
import { printBar, printMask } from './ink-sheet.ts';
import { type KindOf, kind } from './kind.ts';
import { letterings } from './letterings.ts';
import { onBench } from './on-bench.ts';
import { lettered } from './pen.ts';
import { rule, ruleNumbers } from './rules.ts';
import type { ScaleSpec } from './scale-spec.ts';
import { cmStanding, cmTape } from './soft-tapes.ts';
import { darkSurface, stiffSurface } from './surfaces.ts';
import { centimetres } from './tape-styles.ts';
import { inventedLine } from './words.ts';

/** Scales and near-scales that can't be read, whatever is tried. */
export const notTapes = {
  'rod without numbers': kind(
    'ask-or-cannot',
    'black and white blocks of 10 cm or 1 cm',
    (random) => {
      const camera = phone(random, random.between(300, 900), 25);
      const block = random.pick([10, 50, 100]);
      const bare = rule(random, camera, stiffSurface(random), () => [], { length: 1500 });
      const decorate: typeof bare.decorate = (sheet) => {
        for (let s = bare.from; s < bare.to; s += 2 * block)
          printBar(sheet, [s, s + block], [0, bare.width]);
      };
      return onBench(random, { camera, tapes: [{ ...bare, decorate }], note: 'no numbers' });
    },
  ),
  'rule without numbers': kind('ask-or-cannot', 'millimetre lines, no numbers at all', (random) => {
    const camera = phone(random, random.between(120, 220), 20);
    const bare = rule(random, camera, stiffSurface(random), () => []);
    const { numbers: _, ...lines } = centimetres(random, cmStanding(bare.from), bare.width);
    return onBench(random, { camera, tapes: [{ ...bare, unread: [lines] }], note: 'no numbers' });
  }),
  'blurred rule': kind(
    'ask-or-cannot',
    'lines run together, numbers not to be made out',
    (random) => {
      const camera = phone(random, random.between(200, 320), 15);
      const blur = random.between(1.5, 2.3) * (camera.focal / camera.distance);
      const lens = { blur, motion: 0, motionAngle: 0 };
      return onBench(random, { camera, tapes: [cmTape(random, camera)], lens, note: 'blurred' });
    },
  ),
  'too far away': kind('ask-or-cannot', 'less than a pixel to the millimetre', (random) => {
    const camera = phone(random, random.between(2600, 4200), 25);
    return onBench(random, { camera, tapes: [cmTape(random, camera)], note: 'far' });
  }),
  'gauge in feet': kind('ask-or-cannot', 'feet in tenths and hundredths', (random) => {
    const camera = phone(random, random.between(600, 1100), 20);
    const gauge = rule(
      random,
      camera,
      random.chance(0.5) ? stiffSurface(random) : darkSurface(random),
      () => [],
      { length: 3000, width: 80 },
    );
    const feet: ScaleSpec = {
      ...cmStanding(-300 - 305 * random.whole(0, 3)),
      ...{
        id: 'foot',
        last: 9,
        first: 0,
        unit: 'foot',
        subdivisions: 50,
        numberEvery: 0.1,
        inset: 0,
      },
      lines: [
        { every: 50, mm: 45 },
        { every: 5, mm: 32 },
        { every: 1, mm: 18 },
      ],
      stroke: 3,
      numbers: {
        ...ruleNumbers(random, 32, 17),
        across: 52,
        text: (value: number) =>
          Math.round(value * 10) % 10 === 0
            ? `${Math.round(value)}`
            : `${Math.round(value * 10) % 10}`,
        heightOf: (value: number) => (Math.round(value * 10) % 10 === 0 ? 28 : 17),
      },
    };
    return onBench(random, { camera, tapes: [{ ...gauge, unread: [feet] }], note: 'feet' });
  }),
  'coiled tape': kind(
    'ask-or-cannot',
    'turns of a coil, two or three numbers on each',
    (random) => {
      const camera = phone(random, random.between(200, 280), 10);
      const whole = cmTape(random, camera, { lay: { x: 0, y: 0 } });
      const [turn, step] = [random.between(58, 80), random.between(16, 21)];
      const slant = random.between(0.9, 1.2);
      const turns = Array.from({ length: 9 }, (_, i) => {
        const scales = whole.scales.map((scale) => ({
          ...scale,
          zero: scale.zero - turn * (i - 4),
        }));
        // A half turn round a cylinder: steeper and steeper away from its middle.
        const lift = (s: number) => 11 * Math.cos(Math.max(-1.25, Math.min(1.25, s / 13)));
        const lay = { x: step * (i - 4), y: 0, angle: slant, lift };
        return { ...whole, from: -16, to: 16, lay, scales: [], unread: scales };
      });
      return onBench(random, { camera, tapes: turns, note: 'coil' });
    },
  ),
  'page of text': kind('ask-or-cannot', 'lines of print with numbers among them', (random) => {
    const camera = phone(random, random.between(130, 220), 25);
    const page = rule(random, camera, stiffSurface(random), () => [], {
      length: 210,
      width: 150,
      lay: { angle: 0.2 * random.normal() },
    });
    const style = random.pick(letterings);
    const decorate: typeof page.decorate = (sheet) => {
      for (let y = 10; y < 140; y += 6) {
        const mask = lettered(inventedLine(random, 9), style, 2.6 * sheet.perMm);
        printMask(sheet, mask, [page.from + 105, y]);
      }
    };
    return onBench(random, { camera, tapes: [{ ...page, decorate }], note: 'text' });
  }),
} as const satisfies Record<string, KindOf>;
