import { boxedTape, someBoxes } from './boxed.ts';
import type { CameraSpec } from './camera.ts';
import { aimed } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { bent } from './lays.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { cmStanding, softTape } from './soft-tapes.ts';
import { centimetres, inches } from './tape-styles.ts';

const SIZES = [
  [1600, 1200],
  [1200, 1600],
  [1400, 1050],
] as const;

/** A phone over a bench of up to `most` mm from side to side, in a picture that is quickly read. */
function closeBy(random: Random, most: number): CameraSpec {
  const [width, height] = random.pick(SIZES);
  return aimed(random, { width, height, span: random.between(110, most), tilt: 20 });
}

/** The commonest soft tapes: lines across the whole tape, and a number before each. It may ask, it may not be wrong. */
export const boxed = {
  'numbers boxed across': kind(
    'any',
    'numbers turned by 90 degrees, each between two lines across the tape',
    (random) => {
      const camera = closeBy(random, 240);
      const tapes = [boxedTape(random, camera, someBoxes(random))];
      return onBench(random, { camera, tapes, note: 'boxed' });
    },
  ),
  'boxed, millimetres on one edge': kind(
    'any',
    'boxed numbers turned by 90 degrees, short lines on one edge only',
    (random) => {
      const camera = closeBy(random, 240);
      const lay = random.chance(0.3) ? { bend: bent(random) } : {};
      const boxes = someBoxes(random, { bothEdges: false });
      const tapes = [boxedTape(random, camera, boxes, { lay })];
      return onBench(random, { camera, tapes, note: 'one edge' });
    },
  ),
  'boxed, many lengths of line': kind(
    'any',
    'tens across the tape, centimetres most of it, half centimetres up to the digits',
    (random) => {
      const camera = closeBy(random, 240);
      const boxes = someBoxes(random, {
        cmShare: random.between(0.45, 1),
        halfShare: random.between(0.2, 0.4),
      });
      const tapes = [boxedTape(random, camera, boxes)];
      return onBench(random, { camera, tapes, note: 'many lengths' });
    },
  ),
  'boxed along the tape': kind(
    'any',
    'upright numbers that nearly fill the box before their line',
    (random) => {
      const camera = closeBy(random, 240);
      const boxes = someBoxes(random, {
        turned: 0,
        height: random.between(4.5, 7.5),
        clear: random.between(0.4, 1),
      });
      const tapes = [boxedTape(random, camera, boxes)];
      return onBench(random, { camera, tapes, note: 'wide numbers' });
    },
  ),
  'line between two digits': kind(
    'any',
    'a line across the tape parts two digits; one digit stands before it',
    (random) => {
      const camera = closeBy(random, 260);
      const inch = random.chance(0.6);
      const tape = softTape(random, camera, (zero, width) => {
        const standing = { ...cmStanding(zero), last: inch ? 59 : 150 };
        const scale = inch
          ? inches(random, { ...standing, id: 'inch' }, width, random.pick([8, 16]))
          : centimetres(random, standing, width);
        const [long, ...others] = scale.lines;
        const lines = [{ every: long!.every, mm: width }, ...others];
        const numbers = {
          ...scale.numbers!,
          place: 'on' as const,
          placeOf: (value: number) => (value < 10 ? 'before' : 'on') as 'before' | 'on',
          // Room for the line between the two.
          text: (value: number) => [...`${value}`].join(value < 100 ? ' ' : ''),
          heightOf: (value: number) => scale.numbers!.height * (value < 100 ? 0.8 : 0.6),
        };
        return [{ ...scale, lines, numbers }];
      });
      return onBench(random, { camera, tapes: [tape], note: 'parted digits' });
    },
  ),
} as const satisfies Record<string, KindOf>;
