import { type Ink, joinedInk, maskInk, strokeInk } from './print.ts';
import type { Rubbish } from './rubbish.ts';

/** Letters and signs that nothing was trained on. */
const LETTERS = [...'KNRVWYkvwx%#&*@+<>{}'];

const otherLetters: Rubbish = (_, letter, random) => ({
  own: maskInk(letter(random.pick(LETTERS)), 0, 0, 1),
  others: [],
});

/** A seam: short slanted strokes in rows. */
const stitches: Rubbish = (_, __, random) => {
  const lean = random.between(-0.12, 0.12);
  const [pitch, row] = [random.between(0.2, 0.4), random.between(0.25, 0.5)];
  const thick = random.between(0.04, 0.1);
  const own: Ink[] = [];
  for (let y = -1; y <= 1; y += row) {
    for (let x = -1; x <= 1; x += pitch) {
      own.push(strokeInk([x, y], [x + pitch * 0.6, y + lean], thick));
    }
  }
  return { own: joinedInk(own), others: [], boxWidth: random.between(0.3, 0.8) };
};

/** An arrow head, as at a tape's first mark. */
const arrow: Rubbish = (_, __, random) => {
  const wide = random.between(0.3, 0.7);
  const down = random.chance(0.5) ? 1 : -1;
  const own: Ink = (x, y) => {
    const along = down * y + 0.5;
    return along >= 0 && along <= 1 && Math.abs(x) < (wide / 2) * along ? 1 : 0;
  };
  return { own, others: [] };
};

/** Bands of a plaid, each lighter or darker. */
const plaid: Rubbish = (_, __, random) => {
  const [u, v] = [random.between(0.3, 0.9), random.between(0.3, 0.9)];
  const [a, b] = [random.unit(), random.unit()];
  const band = (at: number, pitch: number, from: number) =>
    (((at / pitch + from) % 1) + 1) % 1 < 0.45 ? 0.5 : 0;
  const own: Ink = (x, y) => band(x, u, a) + band(y, v, b);
  return { own, others: [], boxWidth: random.between(0.3, 0.8) };
};

/** A pin: a shaft across the cell with a round head. */
const pin: Rubbish = (_, __, random) => {
  const slope = random.between(0.3, 1.5) * (random.chance(0.5) ? 1 : -1);
  const [x, y] = [random.between(-0.25, 0.25), random.between(-0.35, 0.35)];
  const head = random.between(0.08, 0.18);
  const shaft = strokeInk([x, y], [x + 2, y + 2 * slope], random.between(0.03, 0.07));
  const own: Ink = (atX, atY) => (Math.hypot(atX - x, atY - y) < head ? 1 : shaft(atX, atY));
  return { own, others: [], boxWidth: random.between(0.4, 0.8) };
};

/** A button: a ring or a disc with two or four holes. */
const button: Rubbish = (_, __, random) => {
  const [r, hole, off] = [random.between(0.35, 0.5), random.between(0.04, 0.09), 0.14];
  const holes = random.chance(0.5) ? [0, 1, 2, 3] : [0, 2];
  const turn = random.between(0, Math.PI);
  const rim = random.chance(0.5) ? random.between(0.05, 0.1) : 1;
  const own: Ink = (x, y) => {
    const away = Math.hypot(x, y);
    if (away > r) return 0;
    const isHole = holes.some((i) => {
      const angle = turn + (i * Math.PI) / 2;
      return Math.hypot(x - off * Math.cos(angle), y - off * Math.sin(angle)) < hole;
    });
    return away > r - rim !== isHole ? 1 : 0;
  };
  return { own, others: [] };
};

/** Teeth of a zip: short level strokes to the left and right of a line. */
const zip: Rubbish = (_, __, random) => {
  const [pitch, thick] = [random.between(0.14, 0.3), random.between(0.4, 0.7)];
  const [near, far] = [random.between(-0.05, 0.05), random.between(0.15, 0.3)];
  const own: Ink = (x, y) => {
    const [side, at] = [x > 0 ? 0.5 : 0, Math.abs(x)];
    const phase = (((y / pitch + side) % 1) + 1) % 1;
    return at > near && at < far && phase < thick ? 1 : 0;
  };
  return { own, others: [], boxWidth: random.between(0.4, 0.8) };
};

/** A tick by hand, or a cross beside the place to cut. */
const tickByHand: Rubbish = (_, __, random) => {
  const thick = random.between(0.05, 0.12);
  const [x, y] = [random.between(-0.25, 0.05), random.between(0.3, 0.5)];
  const own = [
    strokeInk([x - 0.2, y - random.between(0.2, 0.4)], [x, y], thick),
    strokeInk([x, y], [x + random.between(0.3, 0.5), y - random.between(0.7, 0.95)], thick),
  ];
  return { own: joinedInk(own), others: [] };
};

export const rubbishAside: readonly Rubbish[] = [
  otherLetters,
  stitches,
  arrow,
  plaid,
  pin,
  button,
  zip,
  tickByHand,
];
