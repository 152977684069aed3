import { aimed } from './circumstances.ts';
import { type KindOf, kind } from './kind.ts';
import { overARoll, tightly } from './lays.ts';
import { onBench } from './on-bench.ts';
import type { Random } from './random.ts';
import { cmTape, twoEdged } from './soft-tapes.ts';

/** A phone near a bench, in a picture that is quickly read. */
function nearBy(random: Random) {
  const [width, height] = random.pick([
    [1600, 1200],
    [1200, 1600],
    [1400, 1050],
  ] as const);
  return aimed(random, { width, height, span: random.between(110, 190), tilt: 15 });
}

/** Soft tapes as they lie: round bends that no straight row follows. It may ask, it may not be wrong. */
export const bentRound = {
  'tight bend': kind('any', 'curved in its own plane, as round the base of a jar', (random) => {
    const camera = nearBy(random);
    const tapes = [cmTape(random, camera, { lay: { bend: tightly(random) } })];
    return onBench(random, { camera, tapes, note: 'tight bend' });
  }),
  'over a roll': kind('any', 'over a roll across it, steep to both sides', (random) => {
    const camera = nearBy(random);
    const lay = { lay: { lift: overARoll(random) } };
    const isPlain = random.chance(0.6);
    const tapes = [isPlain ? cmTape(random, camera, lay) : twoEdged(random, camera, true, lay)];
    return onBench(random, { camera, tapes, note: 'over a roll' });
  }),
} as const satisfies Record<string, KindOf>;
