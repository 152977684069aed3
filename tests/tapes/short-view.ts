import { type Hider, patch } from './hider.ts';
import type { Random } from './random.ts';
import { onTape } from './tape-across.ts';
import type { TapeSpec } from './tape-spec.ts';

/** Two pieces of cloth that leave only a stretch of a straight tape to be seen, about s = 0. */
export function allBut(random: Random, tape: Pick<TapeSpec, 'lay'>, seen: number): Hider[] {
  return [-1, 1].map((side) => {
    const at = onTape(tape, side * (seen / 2 + 150), 0);
    const size = { long: 300, wide: 400, grey: random.between(40, 200) };
    return patch(at, tape.lay.angle + 0.12 * random.normal(), size);
  });
}

/** A piece of cloth over a stretch of a straight tape. */
export function over(
  random: Random,
  tape: Pick<TapeSpec, 'lay'>,
  [s, off]: readonly [number, number],
  [long, wide]: readonly [number, number],
): Hider {
  return patch(onTape(tape, s, off), tape.lay.angle, { long, wide, grey: random.between(40, 200) });
}
