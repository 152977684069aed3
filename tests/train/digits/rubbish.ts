import type { Random } from '../../tapes/random.ts';
import type { Lettered } from './letter-masks.ts';
import { type Ink, joinedInk, maskInk, type Print, strokeInk, turnedInk } from './print.ts';

/** Something a cutter may take for a digit. */
export type Rubbish = (digit: Lettered, letter: Lettered, random: Random) => Print;

/** None that is a digit's twin in some typeface: O, D, Q, I, l, Z, S, B, G, g, q, b, e. */
const LETTERS = [...'ACEFHLMTUXcfhmnrtuJPadpy?$£€§=~^½¼¾©ßÆ'];
/** Turned by a quarter or by half, these are no digits any more. */
const QUARTER = [2, 3, 4, 5, 6, 7, 9];
const HALF = [2, 3, 4, 5, 7];

const boxWidth = (random: Random) => random.between(0.25, 0.8);

/** Upright lines that run on beyond the cell, at least at one end. */
const lines: Rubbish = (_, __, random) => {
  const count = random.whole(1, 4);
  const pitch = random.between(0.15, 0.5);
  const start = random.between(-0.35, 0.35) - ((count - 1) / 2) * pitch;
  const thick = random.between(0.03, 0.14);
  const low = random.chance(0.5);
  const own = Array.from({ length: count }, (_, i): Ink => {
    const x = start + i * pitch;
    const ends = [-2, random.chance(0.5) ? 2 : random.between(-0.2, 0.4)] as const;
    return low
      ? strokeInk([x, ends[0]], [x, ends[1]], thick)
      : strokeInk([x, -ends[1]], [x, 2], thick);
  });
  return { own: joinedInk(own), others: [], boxWidth: boxWidth(random) };
};

const letterOnly: Rubbish = (_, letter, random) => {
  const own = maskInk(letter(random.pick(LETTERS)), 0, 0, 1);
  return { own, others: [] };
};

/** The gap between two digits, with a half of each; a 1 may be whole on one side of it. */
const halves: Rubbish = (digits, _, random) => {
  const digit = () => digits(random.pick(['0', '2', '3', '4', '5', '6', '7', '8', '9']));
  const [left, right] = [digit(), digit()];
  const gap = random.between(0.05, 0.25) / 2;
  const own = joinedInk([
    maskInk(left, -gap - left.width / left.height / 2, 0, 1),
    maskInk(right, gap + right.width / right.height / 2, 0, 1),
  ]);
  return { own, others: [], boxWidth: random.between(0.5, 0.75) };
};

/** A number that was not cut into its digits. */
const twoWhole: Rubbish = (digit, _, random) => {
  const [left, right] = [digit(String(random.whole(0, 9))), digit(String(random.whole(0, 9)))];
  const gap = random.between(0, 0.2) / 2;
  const own = joinedInk([
    maskInk(left, -gap - left.width / left.height / 2, 0, 1),
    maskInk(right, gap + right.width / right.height / 2, 0, 1),
  ]);
  return { own, others: [], wide: true };
};

const turnedDigit: Rubbish = (digit, _, random) => {
  const half = random.chance(0.3);
  const mask = digit(String(random.pick(half ? HALF : QUARTER)));
  const degrees = half ? 180 : random.pick([90, -90]);
  return { own: turnedInk(maskInk(mask, 0, 0, 1), degrees), others: [] };
};

/** Corners and crossings of boxes and rows of lines. */
const corners: Rubbish = (_, __, random) => {
  const [x, y] = [random.between(-0.4, 0.4), random.between(-0.45, 0.45)];
  const thick = random.between(0.03, 0.14);
  const ends = [random.chance(0.5) ? x : -2, random.chance(0.6) ? 2 : x] as const;
  const own = [strokeInk([ends[0], y], [ends[1], y], thick)];
  own.push(strokeInk([x, random.chance(0.5) ? y : -2], [x, 2], thick));
  const ink = joinedInk(own);
  const turn = random.pick([0, 180]);
  return { own: turnedInk(ink, turn), others: [], boxWidth: boxWidth(random) };
};

/** Threads across each other. */
const cloth: Rubbish = (_, __, random) => {
  const [u, v] = [random.between(3, 16), random.between(3, 16)];
  const [a, b] = [random.between(0, 6), random.between(0, 6)];
  const twill = random.chance(0.5) ? random.between(-8, 8) : 0;
  const own: Ink = (x, y) =>
    (2 + Math.sin(u * x + twill * y + a) + Math.sin(v * y + b) * (twill ? 0.3 : 1)) / 4;
  return { own, others: [], boxWidth: boxWidth(random) };
};

/** Blots: a few round spots run into one another. */
const dirt: Rubbish = (_, __, random) => {
  const spots = Array.from({ length: random.whole(1, 6) }, () => ({
    x: random.between(-0.3, 0.3),
    y: random.between(-0.45, 0.45),
    r: random.between(0.05, 0.3),
  }));
  const own: Ink = (x, y) =>
    spots.reduce((sum, s) => sum + Math.exp(-((x - s.x) ** 2 + (y - s.y) ** 2) / s.r ** 2), 0) > 0.5
      ? 1
      : 0;
  return random.chance(0.5) ? { own, others: [] } : { own, others: [], boxWidth: boxWidth(random) };
};

/** What is left of cloth, wood or skin where only its darkest is kept: crooked threads and spots. */
const threads: Rubbish = (_, __, random) => {
  const fine = random.between(5, 16);
  const waves = Array.from({ length: 7 }, () => {
    const angle = random.between(0, 2 * Math.PI);
    const pitch = fine * random.between(0.6, 1.3);
    return [pitch * Math.cos(angle), pitch * Math.sin(angle), random.between(0, 7)] as const;
  });
  const [wide, least] = [random.between(0.15, 0.4), random.between(-0.5, 1.4)];
  const thin = random.chance(0.5) ? random.between(0.5, 1.1) : 0;
  const own: Ink = (x, y) => {
    if ((x / wide) ** 2 + (y / 0.5) ** 2 > 1) return 0;
    const height = waves.reduce((sum, [u, v, from]) => sum + Math.sin(u * x + v * y + from), 0);
    return (thin ? Math.abs(height) < thin : height > least) ? 1 : 0;
  };
  return { own, others: [] };
};

/** Level lines: under numbers, along a tape. */
const levels: Rubbish = (digit, letter, random) => {
  const { own, boxWidth: width = 0.6 } = lines(digit, letter, random);
  return { own: turnedInk(own, 90), others: [], boxWidth: width };
};

/** Nothing but ground. */
const nothing: Rubbish = (_, __, random) => ({
  own: () => 0,
  others: [],
  boxWidth: boxWidth(random),
  bare: true,
});

/** Half of a digit: the rest is hidden, or was cut off. None that looks like another digit. */
const part: Rubbish = (digit, _, random) => {
  const boxed = random.chance(0.5);
  const mask = digit(random.pick(boxed ? ['0', '2', '3', '5', '6', '9'] : ['2', '3', '4', '5']));
  const half = mask.width / mask.height / 2;
  const whole = maskInk(mask, 0, 0, 1);
  const level = boxed || random.chance(0.5);
  const cut = random.between(-0.1, 0.1) * (level ? 1 : 2 * half);
  const side = random.chance(0.5) ? 1 : -1;
  const own: Ink = (x, y) => (side * (level ? y : x) > cut ? 0 : whole(x, y));
  return boxed ? { own, others: [], boxWidth: 2 * half } : { own, others: [] };
};

/** Something with strokes that is no character: straight ones and arcs, some of them closed. */
const scrawl: Rubbish = (_, __, random) => {
  const thick = random.between(0.05, 0.16);
  const wide = random.between(0.2, 0.4);
  const at = () => [random.between(-wide, wide), random.between(-0.5, 0.5)] as const;
  const own = Array.from({ length: random.whole(3, 6) }, (): Ink => {
    if (random.chance(0.6)) return strokeInk(at(), at(), thick);
    const [[x, y], r] = [at(), random.between(0.1, 0.35)];
    const [from, long] = [random.between(0, 2 * Math.PI), random.between(1, 6)];
    return (atX, atY) => {
      const angle = (Math.atan2(atY - y, atX - x) + 4 * Math.PI - from) % (2 * Math.PI);
      return angle < long && Math.abs(Math.hypot(atX - x, atY - y) - r) < thick / 2 ? 1 : 0;
    };
  });
  return { own: joinedInk(own), others: [] };
};

/** A patch with straight edges: a hook, a label, a shadow, a piece of tape. */
const patch: Rubbish = (_, __, random) => {
  const [x, y] = [random.between(-0.1, 0.1), random.between(-0.15, 0.15)];
  const [count, turn] = [random.whole(3, 5), random.between(0, 2 * Math.PI)];
  const edges = Array.from({ length: count }, (_, i) => {
    const angle = turn + ((i + random.between(-0.25, 0.25)) / count) * 2 * Math.PI;
    return [Math.cos(angle), Math.sin(angle), random.between(0.1, 0.45)] as const;
  });
  const own: Ink = (atX, atY) =>
    edges.every(([right, down, away]) => (atX - x) * right + (atY - y) * down < away) ? 1 : 0;
  return random.chance(0.7) ? { own, others: [] } : { own, others: [], boxWidth: boxWidth(random) };
};

/** Two digits printed over each other. */
const overprinted: Rubbish = (digit, _, random) => {
  const mask = () => digit(String(random.whole(0, 9)));
  const side = () => (random.chance(0.5) ? 1 : -1);
  const [x, y] = [side() * random.between(0.06, 0.14), side() * random.between(0.08, 0.2)];
  const own = [maskInk(mask(), x, y, 1), maskInk(mask(), -x, -y, 1)];
  return { own: joinedInk(own), others: [] };
};

/** An even edge between light and dark, as where the tape or a stripe ends. */
const edge: Rubbish = (_, __, random) => {
  const angle = random.between(0, 2 * Math.PI);
  const [right, down, away] = [Math.cos(angle), Math.sin(angle), random.between(-0.3, 0.3)];
  const wide = random.chance(0.5) ? random.between(0.1, 0.4) : 3;
  const own: Ink = (x, y) => {
    const off = x * right + y * down - away;
    return off > 0 && off < wide ? 1 : 0;
  };
  return { own, others: [], boxWidth: boxWidth(random) };
};

export const trainedRubbish: readonly Rubbish[] = [
  lines,
  letterOnly,
  letterOnly,
  letterOnly,
  halves,
  twoWhole,
  turnedDigit,
  corners,
  cloth,
  dirt,
  threads,
  threads,
  levels,
  nothing,
  part,
  part,
  scrawl,
  scrawl,
  patch,
  patch,
  overprinted,
  edge,
];
