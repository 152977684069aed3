import type { Random } from './random.ts';

/** Something lying on the bench over a tape; places in mm on the bench. */
export interface Hider {
  /** How far outside its outline a place is, mm; less than 0 inside. */
  away(x: number, y: number): number;
  /** Its grey at a place inside. */
  grey(x: number, y: number, away: number): number;
  /** How far its shadow falls, mm, and how dark. */
  readonly shadow: { readonly reach: number; readonly dark: number };
  readonly texture: number;
}

type Point = readonly [number, number];

/** A fingertip at `tip` that comes in along `angle`: lighter along its back, with a nail. */
export function finger(random: Random, tip: Point, angle: number): Hider {
  const radius = random.between(7, 9.5);
  const skin = random.between(70, 190);
  const back: Point = [tip[0] + 90 * Math.cos(angle), tip[1] + 90 * Math.sin(angle)];
  const nail: Point = [tip[0] - 1.5 * Math.cos(angle), tip[1] - 1.5 * Math.sin(angle)];
  return {
    away: (x, y) => toSegment(x, y, tip, back) - radius,
    grey: (x, y, away) => {
      const round = Math.sqrt(Math.max(0, 1 - (1 + away / radius) ** 2));
      const onNail = Math.hypot(x - nail[0], y - nail[1]) < 0.55 * radius;
      return skin * (0.55 + 0.45 * round) + (onNail ? 28 : 0);
    },
    shadow: { reach: 3.5, dark: 0.4 },
    texture: 0.02,
  };
}

/** A bright steel pin with a ball head. */
export function pin(random: Random, at: Point, angle: number): Hider {
  const length = random.between(24, 38);
  const end: Point = [at[0] + length * Math.cos(angle), at[1] + length * Math.sin(angle)];
  const [head, steel] = [random.between(30, 230), random.between(150, 240)];
  const toHead = (x: number, y: number) => Math.hypot(x - at[0], y - at[1]) - 2;
  return {
    away: (x, y) => Math.min(toHead(x, y), toSegment(x, y, at, end) - 0.32),
    grey: (x, y) => (toHead(x, y) < 0 ? head + 40 * (toHead(x, y) < -1.3 ? 1 : 0) : steel),
    shadow: { reach: 0.8, dark: 0.35 },
    texture: 0,
  };
}

/** A loose end of sewing thread, wandering. */
export function thread(random: Random, from: Point, angle: number): Hider {
  const points: Point[] = [from];
  let turn = angle;
  for (let i = 0; i < 14; i++) {
    turn += 0.35 * random.normal();
    const [x, y] = points[i]!;
    points.push([x + 7 * Math.cos(turn), y + 7 * Math.sin(turn)]);
  }
  const grey = random.between(15, 240);
  return {
    away: (x, y) => {
      let least = Infinity;
      for (let i = 1; i < points.length; i++) {
        least = Math.min(least, toSegment(x, y, points[i - 1]!, points[i]!));
      }
      return least - 0.22;
    },
    grey: () => grey,
    shadow: { reach: 0.5, dark: 0.3 },
    texture: 0.1,
  };
}

/** A piece of other cloth or card, `long` by `wide` mm, its long side along `angle`. */
export function patch(
  at: Point,
  angle: number,
  { long, wide, grey }: { long: number; wide: number; grey: number },
): Hider {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    away: (x, y) => {
      const u = Math.abs((x - at[0]) * c + (y - at[1]) * s) - long / 2;
      const v = Math.abs((y - at[1]) * c - (x - at[0]) * s) - wide / 2;
      return Math.hypot(Math.max(0, u), Math.max(0, v)) + Math.min(0, Math.max(u, v));
    },
    grey: () => grey,
    shadow: { reach: 1.5, dark: 0.35 },
    texture: 0.07,
  };
}

function toSegment(x: number, y: number, [x0, y0]: Point, [x1, y1]: Point): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const along = ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy);
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(x - x0 - t * dx, y - y0 - t * dy);
}
