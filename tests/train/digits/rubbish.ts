import type { Random } from '../../tapes/random.ts';
import type { Lettered } from './letter-masks.ts';
import { type Ink, joinedInk, maskInk, type Print, strokeInk, turnedInk } from './print.ts';

/** Something a cutter may take for a digit. */
export type Rubbish = (letter: Lettered, random: Random) => Print;

/** None that is a digit's twin in some typeface: O, I, l, Z, S, B, G, g, q, b. */
const LETTERS = [...'ACEFHLMTUXcfhmnrtu'];
/** Turned by a quarter or by half, these are no digits any more. */
const QUARTER = [2, 3, 4, 5, 6, 7, 9];
const HALF = [3, 4, 7];

const boxWidth = (random: Random) => random.between(0.25, 0.8);

/** Upright lines that run on beyond the cell, at least at one end. */
const lines: Rubbish = (_, random) => {
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

const letterOnly: Rubbish = (letter, random) => {
  const own = maskInk(letter(random.pick(LETTERS)), 0, 0, 1);
  return { own, others: [] };
};

/** The gap between two digits, with a half of each; a 1 may be whole on one side of it. */
const halves: Rubbish = (letter, random) => {
  const digit = () => letter(random.pick(['0', '2', '3', '4', '5', '6', '7', '8', '9']));
  const [left, right] = [digit(), digit()];
  const gap = random.between(0.05, 0.25) / 2;
  const own = joinedInk([
    maskInk(left, -gap - left.width / left.height / 2, 0, 1),
    maskInk(right, gap + right.width / right.height / 2, 0, 1),
  ]);
  return { own, others: [], boxWidth: random.between(0.5, 0.75) };
};

/** A number that was not cut into its digits. */
const twoWhole: Rubbish = (letter, random) => {
  const [left, right] = [letter(String(random.whole(0, 9))), letter(String(random.whole(0, 9)))];
  const gap = random.between(0, 0.2) / 2;
  const own = joinedInk([
    maskInk(left, -gap - left.width / left.height / 2, 0, 1),
    maskInk(right, gap + right.width / right.height / 2, 0, 1),
  ]);
  return { own, others: [] };
};

const turnedDigit: Rubbish = (letter, random) => {
  const half = random.chance(0.3);
  const mask = letter(String(random.pick(half ? HALF : QUARTER)));
  const degrees = half ? 180 : random.pick([90, -90]);
  return { own: turnedInk(maskInk(mask, 0, 0, 1), degrees), others: [] };
};

/** Corners and crossings of boxes and rows of lines. */
const corners: Rubbish = (_, random) => {
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
const cloth: Rubbish = (_, random) => {
  const [u, v] = [random.between(3, 16), random.between(3, 16)];
  const [a, b] = [random.between(0, 6), random.between(0, 6)];
  const twill = random.chance(0.5) ? random.between(-8, 8) : 0;
  const own: Ink = (x, y) =>
    (2 + Math.sin(u * x + twill * y + a) + Math.sin(v * y + b) * (twill ? 0.3 : 1)) / 4;
  return { own, others: [], boxWidth: boxWidth(random) };
};

/** Blots: a few round spots run into one another. */
const dirt: Rubbish = (_, random) => {
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

/** Level lines: under numbers, along a tape. */
const levels: Rubbish = (letter, random) => {
  const { own, boxWidth: width = 0.6 } = lines(letter, random);
  return { own: turnedInk(own, 90), others: [], boxWidth: width };
};

/** Nothing but ground. */
const nothing: Rubbish = (_, random) => ({ own: () => 0, others: [], boxWidth: boxWidth(random) });

export const trainedRubbish: readonly Rubbish[] = [
  lines,
  letterOnly,
  letterOnly,
  halves,
  twoWhole,
  turnedDigit,
  corners,
  cloth,
  dirt,
  levels,
  nothing,
];
