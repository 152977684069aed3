import { type DigitBox, digitCell } from '../../../src/tape/digits/digit-cell.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import type { Random } from '../../tapes/random.ts';
import { joinedInk, type Print } from './print.ts';
import type { View } from './view.ts';

/** More of the print than a cell of one digit shows, and of one as wide as two, in heights of a digit. */
const SEEN = { wide: 1.15, tall: 1.4 };
const SEEN_WIDER = { wide: 1.7, tall: 1.7 };
/** So much ink is an edge. */
const EDGE = 0.4;
/** So little ink is none, where a number is cut out along its ink. */
const NO_INK = 0.04;
/** Ink at its darkest as a number's own level is taken: lighter than most of it. */
const TYPICAL = 0.3;

/** How much of each pixel is inked. */
interface Shades {
  readonly width: number;
  readonly height: number;
  readonly own: Float32Array;
  readonly all: Float32Array;
}

/** A cell cut from a small photo of a print: turned, tilted, blurred, unevenly lit, noisy. */
export function photographed(print: Print, view: View, random: Random): Float32Array {
  const seen = shades(print, view);
  const box = boxOf(print, seen, view.tall);
  const alone = view.alone && print.boxWidth === undefined;
  const ink = blurred(alone ? seen.own : seen.all, seen, view.blur);
  const grey = exposed(ink, seen, view, random);
  const pixels = view.cleaned && !print.bare ? cleaned(grey, ink) : grey;
  const [left, right, top, bottom] = view.offs;
  const { x0, x1, y0, y1 } = box;
  const cut: DigitBox = { x0: x0 + left, x1: x1 + right, y0: y0 + top, y1: y1 + bottom };
  const image: GreyImage = { width: seen.width, height: seen.height, pixels };
  return digitCell(image, cut);
}

/** The print as it is seen: turned, sheared and in perspective. */
function shades({ own, others, wide }: Print, view: View): Shades {
  const { tall, shear, stretch, tiltX, tiltY } = view;
  const room = wide ? SEEN_WIDER : SEEN;
  const [width, height] = [Math.ceil(room.wide * tall), Math.ceil(room.tall * tall)];
  const angle = (view.turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const around = joinedInk(others);
  const found = {
    width,
    height,
    own: new Float32Array(width * height),
    all: new Float32Array(width * height),
  };
  for (let i = 0; i < width * height; i++) {
    let [mine, all] = [0, 0];
    for (let part = 0; part < 4; part++) {
      const right = (i % width) + 0.25 + 0.5 * (part & 1);
      const down = Math.floor(i / width) + 0.25 + 0.5 * (part >> 1);
      const [x, y] = [(right - width / 2) / tall, (down - height / 2) / tall];
      const far = 1 + tiltX * x + tiltY * y;
      const v = (y * cos - x * sin) / far;
      const u = ((x * cos + y * sin) / far + shear * v) / stretch;
      const ink = own(u, v);
      mine += ink;
      all += others.length > 0 ? Math.max(ink, around(u, v)) : ink;
    }
    found.own[i] = mine / 4;
    found.all[i] = all / 4;
  }
  return found;
}

/** The box a cutter would lay around the ink, or the one that is given. */
function boxOf({ boxWidth }: Print, { own, width, height }: Shades, tall: number): DigitBox {
  let [x0, x1, y0, y1] = [width, 0, height, 0];
  own.forEach((ink, i) => {
    if (ink < EDGE) return;
    const [x, y] = [i % width, Math.floor(i / width)];
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x + 1), Math.min(y0, y), Math.max(y1, y + 1)];
  });
  if (boxWidth === undefined && x1 > x0) return { x0, x1, y0, y1 };
  const half = ((boxWidth ?? 0.5) * tall) / 2;
  const [middleX, middleY] = [width / 2, height / 2];
  return { x0: middleX - half, x1: middleX + half, y0: middleY - tall / 2, y1: middleY + tall / 2 };
}

function blurred(
  from: Float32Array,
  { width, height }: Pick<Shades, 'width' | 'height'>,
  sigma: number,
): Float32Array {
  const reach = Math.max(1, Math.ceil(2.5 * sigma));
  const weights = Float64Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const pass = (
    source: Float32Array,
    step: number,
    length: number,
    lines: number,
    next: number,
  ) => {
    const out = new Float32Array(source.length);
    for (let line = 0; line < lines; line++) {
      for (let at = 0; at < length; at++) {
        let value = 0;
        for (let i = -reach; i <= reach; i++) {
          const near = Math.min(length - 1, Math.max(0, at + i));
          value += (source[line * next + near * step] as number) * (weights[i + reach] as number);
        }
        out[line * next + at * step] = value / sum;
      }
    }
    return out;
  };
  return pass(pass(from, 1, width, height, width), width, height, width, 1);
}

/** Grey of the photo, ink darker than its ground: light print on dark is turned round before it is read. */
function exposed(
  ink: Float32Array,
  { width, height }: Pick<Shades, 'width' | 'height'>,
  view: View,
  random: Random,
): Uint8Array {
  const { spread, ground, contrast, light, slopeX, slopeY, grain, threads } = view;
  return Uint8Array.from(ink, (share, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    const dark = contrast * share ** spread;
    const print = light ? 1 - contrast + dark : 1 - dark;
    const lit = 1 + slopeX * (x / width - 0.5) + slopeY * (y / height - 0.5);
    const weave = grain * contrast * Math.sin(threads[0] * x) * Math.sin(threads[1] * y);
    // Three uniform numbers are near enough to a bell curve, and quickly drawn: deviation 1.
    const bell = 2 * (random.unit() + random.unit() + random.unit() - 1.5);
    const noise = view.noise * contrast * bell;
    const grey = Math.min(255, Math.max(0, Math.round(ground * (lit * (print + weave) + noise))));
    return light ? 255 - grey : grey;
  });
}

/** Black on white: its ink at its own level, and nothing but ground where there is none. */
function cleaned(grey: Uint8Array, ink: Float32Array): Uint8Array {
  const inked = grey.filter((_, i) => (ink[i] as number) > EDGE).sort();
  const ground = grey.filter((_, i) => (ink[i] as number) <= NO_INK).sort();
  if (inked.length === 0 || ground.length === 0) return grey;
  const black = inked[Math.floor(inked.length * TYPICAL)] as number;
  const white = Math.max(black + 8, ground[ground.length >> 1] as number);
  return grey.map((value, i) => {
    if ((ink[i] as number) <= NO_INK) return 255;
    return Math.round(255 * Math.min(1, Math.max(0, (value - black) / (white - black))));
  });
}
