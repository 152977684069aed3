import type { Random } from './random.ts';
import type { Lay } from './tape-spec.ts';

/** One bend of 120 mm radius or more, or a bend and its opposite. */
export function bent(random: Random): (s: number) => number {
  const most = (random.pick([-1, 1]) * 1) / random.between(130, 600);
  if (random.chance(0.4)) return () => most;
  const [wave, start] = [random.between(150, 400), random.between(0, 6.28)];
  return (s) => most * Math.sin((2 * Math.PI * s) / wave + start);
}

/** Lifts of 1 to 5 mm every 60 to 150 mm, and a little sideways wander. */
export function waving(random: Random): Partial<Lay> {
  const [high, wave] = [random.between(1, 5), random.between(60, 150)];
  const [start, wander] = [random.between(0, 6.28), random.between(0, 1 / 900)];
  return {
    lift: (s) => (high / 2) * (1 - Math.cos((2 * Math.PI * s) / wave + start)),
    bend: (s) => wander * Math.sin(s / 40 + start),
  };
}

/** Flat as far as a place in the picture, then turning on its edge. */
export function twisted(random: Random, span: number): Partial<Lay> {
  const [side, from] = [random.pick([-1, 1]), random.between(0.1, 0.3) * span];
  const rate = random.between(0.012, 0.03);
  return { twist: (s) => Math.min(1.15, Math.max(0, rate * (side * s - from))) };
}

/** A bend of 45 to 120 mm radius under the middle of the picture, by 90 to 140 degrees in all, and straight on. */
export function tightly(random: Random): (s: number) => number {
  const radius = random.between(45, 120);
  const side = random.pick([-1, 1]);
  const round = random.between(0.8, 1.2);
  return (s) => (Math.abs(s) < round * radius ? side / radius : 0);
}

/** Over a roll of 30 to 70 mm radius under the middle of the picture, 40 to 55 degrees down to both sides, then straight on. */
export function overARoll(random: Random): (s: number) => number {
  const radius = random.between(30, 70);
  const round = random.between(0.7, 0.95);
  const top = radius * round;
  return (s) => {
    const turned = Math.min(round, Math.abs(s) / radius);
    const beyond = Math.max(0, Math.abs(s) - radius * round);
    return Math.max(0, top - radius * (1 - Math.cos(turned)) - beyond * Math.sin(round));
  };
}
