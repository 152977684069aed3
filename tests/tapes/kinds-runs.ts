import { phone } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { cmTape, twoEdged } from './soft-tapes.ts';
import { onTape } from './tape-across.ts';
import type { TapeSpec } from './tape-spec.ts';

/** A second length of the same tape lying `apart` mm beside the first, turned against it. */
function beside(random: Random, tape: TapeSpec, apart: number, turn: number): TapeSpec {
  const [x, y] = onTape(tape, 0, random.pick([-1, 1]) * apart);
  const shift = random.between(-200, 200);
  const scales = tape.scales.map((scale) => ({
    ...scale,
    id: `second ${scale.id}`,
    zero: scale.zero + shift,
  }));
  const lay = { ...tape.lay, x, y, angle: tape.lay.angle + turn };
  return { ...tape, lay, scales, from: tape.from + shift, to: tape.to + shift };
}

const someTape = (random: Random, camera: Parameters<typeof cmTape>[1]) =>
  random.chance(0.5) ? cmTape(random, camera) : twoEdged(random, camera, true);

/** Lengths of tape so close together that the lines of one are by the numbers of the other. */
export const runs = {
  'runs edge to edge': kind('any', 'a tape doubled back close beside itself', (random) => {
    const camera = phone(random, random.between(190, 300), 20);
    const first = someTape(random, camera);
    const second = beside(
      random,
      first,
      first.width + random.between(-1, 1.5),
      Math.PI + 0.01 * random.normal(),
    );
    return onBench(random, { camera, tapes: [first, second], note: 'doubled back' });
  }),
  'one half over the other': kind(
    'any',
    'a length of tape over half the width of another, nearly along it',
    (random) => {
      const camera = phone(random, random.between(190, 300), 20);
      const first = someTape(random, camera);
      const apart = random.between(4, first.width - 3);
      const second = beside(random, first, apart, 0.07 * random.normal());
      return onBench(random, { camera, tapes: [first, second], note: 'half over' });
    },
  ),
} as const satisfies Record<string, KindOf>;
