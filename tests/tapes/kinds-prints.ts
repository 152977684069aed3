import { phone } from './circumstances.ts';
import { printBar, printMask } from './ink-sheet.ts';
import { type KindOf, kind } from './kind.ts';
import { letterings } from './letterings.ts';
import { onBench } from './on-bench.ts';
import { lettered } from './pen.ts';
import { cmStanding, cmTape, softTape, twoEdged } from './soft-tapes.ts';
import { darkSurface } from './surfaces.ts';
import { acrossTheTape, centimetres } from './tape-styles.ts';
import { inventedWord } from './words.ts';

/** Soft tapes whose print is out of the ordinary. */
export const prints = {
  'light print on dark': kind('read', 'white print on red, blue or black', (random) => {
    const camera = phone(random, random.between(160, 280), 20);
    const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true);
    const tapes = [{ ...tape, surface: darkSurface(random) }];
    return onBench(random, { camera, tapes, note: 'light on dark' });
  }),
  'numbers across the tape': kind('read', 'numbers turned by 90 degrees', (random) => {
    const camera = phone(random, random.between(150, 260), 20);
    const turned = random.pick([1, 3] as const);
    const tape = softTape(random, camera, (zero, width) => {
      const scale = centimetres(random, cmStanding(zero), width);
      const long = scale.lines[0]!.mm;
      return [{ ...scale, numbers: acrossTheTape(scale.numbers!, (long + width) / 2, turned) }];
    });
    return onBench(random, { camera, tapes: [tape], note: 'turned numbers' });
  }),
  'red tens and metres': kind(
    'read',
    'tens in red, decimetres tinted, "1 m" at the metre',
    (random) => {
      const camera = phone(random, random.between(170, 300), 20);
      const near = random.chance(0.5) ? { middle: random.between(940, 1060) } : {};
      const tape = softTape(
        random,
        camera,
        (zero, width) => {
          const scale = centimetres(random, cmStanding(zero), width);
          const tens = (value: number) => (value % 10 === 0 ? 0.62 : 1);
          const text = (value: number) => (value === 100 ? '1 m' : `${value}`);
          return [{ ...scale, numbers: { ...scale.numbers!, strength: tens, text } }];
        },
        near,
      );
      const zero = tape.scales[0]!.zero;
      const tint = random.between(15, 50);
      const sheen = (s: number) => (Math.floor((s - zero) / 100) % 2 === 0 ? 0 : -tint);
      const tapes = [{ ...tape, surface: { ...tape.surface, sheen } }];
      return onBench(random, { camera, tapes, note: 'tinted decimetres' });
    },
  ),
  'worn print': kind('read', 'print rubbed off in patches', (random) => {
    const camera = phone(random, random.between(150, 260), 20);
    const tape = random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, false);
    const surface = { ...tape.surface, worn: random.between(0.25, 0.55) };
    return onBench(random, { camera, tapes: [{ ...tape, surface }], note: 'worn' });
  }),
  'words on the tape': kind(
    'read',
    'a maker’s word and rules of ornament beside the scale',
    (random) => {
      const camera = phone(random, random.between(160, 280), 20);
      const tape = cmTape(random, camera, { width: random.between(18, 24) });
      const decorate: typeof tape.decorate = (sheet) => {
        for (let s = tape.from; s < tape.to; s += random.between(50, 110)) {
          const mask = lettered(inventedWord(random), random.pick(letterings), 2.2 * sheet.perMm);
          printMask(sheet, mask, [s, tape.width - 2.4]);
        }
        printBar(sheet, [tape.from, tape.to], [tape.width - 0.7, tape.width - 0.45]);
      };
      return onBench(random, { camera, tapes: [{ ...tape, decorate }], note: 'words' });
    },
  ),
  'metal end': kind('read', 'a metal end hides the first marks', (random) => {
    const camera = phone(random, random.between(120, 240), 20);
    const span = (camera.distance * camera.width) / camera.focal;
    const piece = { middle: random.between(0.15, 0.35) * Math.min(span, 200) };
    const tape = random.chance(0.5)
      ? cmTape(random, camera, piece)
      : twoEdged(random, camera, false, piece);
    const cap = {
      from: tape.from,
      to: tape.from + random.between(6, 16),
      grey: random.between(90, 200),
    };
    return onBench(random, { camera, tapes: [{ ...tape, caps: [cap] }], note: 'zero is hidden' });
  }),
  'bare start': kind('read', 'the tape goes on without print before its zero', (random) => {
    const camera = phone(random, random.between(120, 240), 20);
    const piece = { middle: random.between(20, 60), margin: random.between(8, 40) };
    const tapes = [cmTape(random, camera, piece)];
    return onBench(random, { camera, tapes, note: 'zero is not the end of the tape' });
  }),
  'far end': kind('read', 'the last lines, and bare tape beyond', (random) => {
    const camera = phone(random, random.between(120, 240), 20);
    const piece = { middle: random.between(1430, 1480), margin: random.between(2, 30) };
    const tapes = [
      random.chance(0.5) ? cmTape(random, camera, piece) : twoEdged(random, camera, true, piece),
    ];
    return onBench(random, { camera, tapes, note: 'ends at 150 cm' });
  }),
} as const satisfies Record<string, KindOf>;
