import { ground, phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { millimetres, rule } from './rules.ts';
import { cmStanding, twoEdged } from './soft-tapes.ts';
import { clearSurface, steelSurface, stiffSurface } from './surfaces.ts';
import { centimetres, inches, type Standing } from './tape-styles.ts';

const low = (id: string, zero: number, last: number): Standing => ({
  ...cmStanding(zero),
  id,
  last,
});
const high = (id: string, zero: number, last: number): Standing => ({
  ...low(id, zero, last),
  edge: 'high',
});

const closeUp = (random: Random) => phone(random, random.between(100, 190), 22);

/** Stiff rules of steel, plastic and wood, and stakes. */
export const rules = {
  'steel millimetres': kind(
    'read',
    'bare steel, 10, 20, 30, half millimetres on the other edge',
    (random) => {
      const camera = closeUp(random);
      const steel = rule(random, camera, steelSurface(random, 20), (zero, _, length) => [
        millimetres(random, low('mm', zero, length), false),
        millimetres(random, high('half mm', zero, length), true),
      ]);
      return onBench(random, { camera, tapes: [steel], note: 'mm and half mm' });
    },
  ),
  'steel, one edge upside down': kind(
    'read',
    'centimetres, and inches in 1/16 or 1/32 from the other end',
    (random) => {
      const camera = closeUp(random);
      const steel = rule(random, camera, steelSurface(random, 15), (zero, width, length) => {
        const end = zero + 25.4 * Math.floor(length / 25.4);
        const parts = random.pick([16, 32]);
        const other = { ...high('inch', end, Math.floor(length / 25.4)), direction: -1 } as const;
        return [
          centimetres(random, low('cm', zero, length / 10), width / 2),
          inches(random, other, width / 2, parts),
        ];
      });
      return onBench(random, { camera, tapes: [steel], note: 'two zeros' });
    },
  ),
  'shiny steel': kind('read', 'black on bright steel with bands of glare', (random) => {
    const camera = closeUp(random);
    const shiny = rule(random, camera, steelSurface(random, 75), (zero, width, length) => [
      centimetres(random, low('cm', zero, length / 10), width),
    ]);
    return onBench(random, { camera, tapes: [shiny], note: 'glare in bands' });
  }),
  'clear over wood': kind('read', 'a clear rule on striped wood', (random) => {
    const camera = closeUp(random);
    const clear = rule(random, camera, clearSurface(random), (zero, width, length) => [
      centimetres(random, low('cm', zero, length / 10), width),
    ]);
    const wood = { ...ground(random, 'wood'), grey: random.between(110, 200) };
    return onBench(random, { camera, tapes: [clear], ground: wood, note: 'clear' });
  }),
  'clear over cloth': kind('read', 'a clear rule on cloth', (random) => {
    const camera = closeUp(random);
    const clear = rule(random, camera, clearSurface(random), (zero, width, length) => [
      centimetres(random, low('cm', zero, length / 10), width),
    ]);
    const under = ground(random, random.pick(['plain weave', 'twill', 'stripes', 'check']));
    const cloth = { ...under, grey: random.between(120, 210), second: random.between(130, 200) };
    return onBench(random, { camera, tapes: [clear], ground: cloth, note: 'clear' });
  }),
  'tenths of an inch': kind('read', 'inches in tenths, centimetres on the other edge', (random) => {
    const camera = closeUp(random);
    const plastic = rule(random, camera, stiffSurface(random), (zero, width, length) => [
      inches(random, low('inch', zero, Math.floor(length / 25.4)), width / 2, 10),
      centimetres(random, high('cm', zero, Math.floor(length / 10)), width / 2),
    ]);
    return onBench(random, { camera, tapes: [plastic], note: 'tenths' });
  }),
  'hollow steel tape': kind('read', 'a pocket tape with a hook, hollow across', (random) => {
    const camera = phone(random, random.between(130, 240), 25);
    const width = random.between(16, 25);
    const piece = { width, lay: { hollow: random.between(1.5, 3.5) } };
    const start = random.chance(0.6) ? { middle: random.between(40, 90), margin: 0 } : {};
    const tape = twoEdged(random, camera, false, { ...piece, ...start });
    const caps = [{ from: tape.from - 1, to: tape.from + random.between(3, 12), grey: 150 }];
    return onBench(random, { camera, tapes: [{ ...tape, caps }], note: 'hollow' });
  }),
  yardstick: kind('read', 'a painted wooden rule in eighths', (random) => {
    const camera = phone(random, random.between(180, 330), 20);
    const stick = rule(
      random,
      camera,
      { ...stiffSurface(random), grain: 0.05, brushed: true, base: 190 },
      (zero, width) => [inches(random, low('inch', zero, 36), width, 8)],
      { length: 914.4 },
    );
    return onBench(random, { camera, tapes: [stick], note: 'eighths' });
  }),
} as const satisfies Record<string, KindOf>;
