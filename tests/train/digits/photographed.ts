import { type DigitBox, digitCell } from '../../../src/tape/digits/digit-cell.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import type { Random } from '../../tapes/random.ts';
import { joinedInk, type Print } from './print.ts';

/** More of the print than a cell shows, in heights of a digit. */
const SEEN = 1.7;

interface Shades {
  readonly width: number;
  readonly own: Float32Array;
  readonly all: Float32Array;
}

/** A cell cut from a small photo of a print: turned, tilted, blurred, unevenly lit, noisy. */
export function photographed(print: Print, random: Random): Float32Array {
  const tall = 8 * (40 / 8) ** random.unit();
  const { width, own, all } = shades(print, tall, random);
  const box = boxOf(print, own, width, tall);
  const blur = random.between(0.3, 0.55 + 0.045 * tall);
  const [seen, alone] = [blurred(all, width, blur), blurred(own, width, blur)];
  const shown = random.chance(0.3) && print.boxWidth === undefined ? alone : seen;
  return digitCell(exposed(shown, width, random), jolted(box, random));
}

/** How much of each pixel is inked, of the print as it is seen: turned, sheared and in perspective. */
function shades({ own, others }: Print, tall: number, random: Random): Shades {
  const width = Math.ceil(SEEN * tall);
  const parts = tall < 16 ? 3 : 2;
  const place = viewed(random);
  const around = joinedInk(others);
  const size = width * width;
  const found = { width, own: new Float32Array(size), all: new Float32Array(size) };
  for (let i = 0; i < size; i++) {
    let [mine, all] = [0, 0];
    for (let part = 0; part < parts * parts; part++) {
      const right = (i % width) + ((part % parts) + 0.5) / parts;
      const down = Math.floor(i / width) + (Math.floor(part / parts) + 0.5) / parts;
      const [x, y] = place((right - width / 2) / tall, (down - width / 2) / tall);
      const ink = own(x, y);
      mine += ink;
      all += Math.max(ink, around(x, y));
    }
    found.own[i] = mine / (parts * parts);
    found.all[i] = all / (parts * parts);
  }
  return found;
}

function viewed(random: Random): (x: number, y: number) => readonly [number, number] {
  const angle =
    ((random.chance(0.5) ? random.between(-15, 15) : random.between(-5, 5)) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const shear = random.between(-0.15, 0.15);
  const stretch = random.between(0.85, 1.18);
  const [tiltX, tiltY] = [random.between(-0.15, 0.15), random.between(-0.15, 0.15)];
  return (x, y) => {
    const far = 1 + tiltX * x + tiltY * y;
    const [u, v] = [(x * cos + y * sin) / far, (y * cos - x * sin) / far];
    return [(u + shear * v) / stretch, v];
  };
}

/** The box a cutter would lay around the ink, or the one that is given. */
function boxOf({ boxWidth }: Print, own: Float32Array, width: number, tall: number): DigitBox {
  const middle = width / 2;
  let [x0, x1, y0, y1] = [width, 0, width, 0];
  own.forEach((ink, i) => {
    if (ink < 0.4) return;
    const [x, y] = [i % width, Math.floor(i / width)];
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x + 1), Math.min(y0, y), Math.max(y1, y + 1)];
  });
  if (boxWidth === undefined && x1 > x0) return { x0, x1, y0, y1 };
  const half = ((boxWidth ?? 0.5) * tall) / 2;
  return { x0: middle - half, x1: middle + half, y0: middle - tall / 2, y1: middle + tall / 2 };
}

/** No cutter finds the edges of ink to the pixel. */
function jolted({ x0, x1, y0, y1 }: DigitBox, random: Random): DigitBox {
  const off = () => random.normal() * (0.4 + 0.025 * (y1 - y0));
  return { x0: x0 + off(), x1: x1 + off(), y0: y0 + off(), y1: y1 + off() };
}

function blurred(from: Float32Array, width: number, sigma: number): Float32Array {
  const reach = Math.max(1, Math.ceil(2.5 * sigma));
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const pass = (source: Float32Array, step: number, across: number) => {
    const out = new Float32Array(source.length);
    for (let line = 0; line < width; line++) {
      for (let at = 0; at < width; at++) {
        let value = 0;
        for (let i = -reach; i <= reach; i++) {
          const near = Math.min(width - 1, Math.max(0, at + i));
          value += (source[line * across + near * step] as number) * (weights[i + reach] as number);
        }
        out[line * across + at * step] = value / sum;
      }
    }
    return out;
  };
  return pass(pass(from, 1, width), width, 1);
}

/** Grey of the photo: thick or starved ink, dark on light or the other way, shade, cloth, noise. */
function exposed(ink: Float32Array, width: number, random: Random): GreyImage {
  const spread = random.between(0.6, 1.6);
  const ground = random.between(110, 245);
  const contrast = random.between(0.15, 0.95);
  const inverse = random.chance(0.3);
  const shade = 0.45 * contrast;
  const [slopeX, slopeY] = [random.between(-shade, shade), random.between(-shade, shade)];
  const grain = random.chance(0.4) ? random.between(0, 0.12) * contrast : 0;
  const [u, v] = [random.between(0.5, 2.5), random.between(0.5, 2.5)];
  const noise = random.between(0, 0.09) * contrast * ground;
  const pixels = Uint8Array.from(ink, (share, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    const dark = contrast * share ** spread;
    const print = inverse ? 1 - contrast + dark : 1 - dark;
    const light = 1 + slopeX * (x / width - 0.5) + slopeY * (y / width - 0.5);
    const weave = grain * Math.sin(u * x) * Math.sin(v * y);
    const grey = ground * light * (print + weave) + noise * random.normal();
    return Math.min(255, Math.max(0, Math.round(grey)));
  });
  return { width, height: width, pixels };
}
